import type { z } from 'zod';
import type { HiveLookRow, HiveLookSheet, HiveLookSheetView } from '../../../shared/contract/hives.ts';
import { runningBatches } from '../hands-off.ts';
import { hiveLine, hivesInTypingOrder, lastHiveLook } from '../hive-lines.ts';
import type { Desk } from '../operation.ts';

/** The rows of an evening's typing for hives: those of one yard, or all, yard by yard and by code. */
export function getHiveLookSheet(
  { workbook: { tables }, today }: Desk,
  { yardId, sheetDay }: z.infer<typeof HiveLookSheet>,
): HiveLookSheetView {
  const running = runningBatches(tables, today);
  const rows = hivesInTypingOrder(tables, yardId).map((colony): HiveLookRow => {
    const { id, code, name, yard, place, handsOff, newQueen } = hiveLine(tables, running, colony, today);
    const looks = tables.hiveLooks.where({ colonyId: id });
    return {
      id,
      code,
      name,
      yard,
      place,
      handsOff,
      newQueen,
      last: lastHiveLook(tables, id, sheetDay),
      typed: looks.findLast(({ lookedOn }) => lookedOn === sheetDay) ?? null,
    };
  });
  return { sheetDay, rows };
}
