import type { z } from 'zod';
import type { HiveLookRow, HiveLookSheet, HiveLookSheetView } from '../../../shared/contract/hives.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { HiveLook } from '../../../shared/model/look.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { hiveLine } from './hive-lines.ts';

/** The rows of an evening's typing for hives: those of one yard, or all, yard by yard and by code. */
export function getHiveLookSheet(
  { workbook: { tables }, today }: Desk,
  { yardId, sheetDay }: z.infer<typeof HiveLookSheet>,
): HiveLookSheetView {
  const running = runningBatches(tables, today);
  const rows = tables.colonies
    .all()
    .filter((colony) => colony.endedOn === null && (yardId === null || colony.yardId === yardId))
    .map((colony): HiveLookRow => {
      const { id, code, name, yard, place, handsOff, newQueen } = hiveLine(tables, running, colony, today);
      const looks = tables.hiveLooks.where({ colonyId: colony.id });
      const before = looks.filter(({ lookedOn }) => lookedOn < sheetDay);
      return {
        id,
        code,
        name,
        yard,
        place,
        handsOff,
        newQueen,
        last: before.toSorted(byDay).at(-1) ?? null,
        typed: looks.findLast(({ lookedOn }) => lookedOn === sheetDay) ?? null,
      };
    });
  return {
    sheetDay,
    rows: rows.toSorted((a, b) => compareCodes(a.yard ?? '', b.yard ?? '') || compareCodes(a.code, b.code)),
  };
}

const byDay = (a: HiveLook, b: HiveLook): number => (a.lookedOn < b.lookedOn ? -1 : 1);
