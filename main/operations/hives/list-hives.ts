import type { HiveList } from '../../../shared/contract/hives.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { runningBatches } from '../hands-off.ts';
import { hiveLine } from '../hive-lines.ts';
import type { Desk } from '../operation.ts';

/** All hives by code, and the yards they may stand in. */
export function listHives({ workbook: { tables }, today }: Desk): HiveList {
  const running = runningBatches(tables, today);
  return {
    hives: tables.colonies
      .all()
      .toSorted((a, b) => compareCodes(a.code, b.code))
      .map((colony) => hiveLine(tables, running, colony, today)),
    yards: tables.yards.all().toSorted((a, b) => compareCodes(a.name, b.name)),
  };
}
