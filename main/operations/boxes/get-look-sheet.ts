import type { z } from 'zod';
import type { LookSheet, LookSheetView } from '../../../shared/contract/boxes.ts';
import { yearOfDay } from '../../../shared/kernel/day.ts';
import { BoxReader } from '../box-lines.ts';
import { answersLook } from '../look-answers.ts';
import type { Desk } from '../operation.ts';
import { nextQueenNumber } from '../queen-numbers.ts';
import { lookRow } from './look-rows.ts';

/**
 * The rows to type in: the boxes of one batch that still wait for the named look, or every box that holds something.
 * Walking order, the same as on the yard sheet.
 */
export function getLookSheet(desk: Desk, { batchId, step, sheetDay }: z.infer<typeof LookSheet>): LookSheetView {
  const { tables } = desk.workbook;
  const reader = new BoxReader(tables, desk.today);
  const rows = tables.boxes
    .where({ retiredOn: null })
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map((box) => lookRow(tables, reader, box, sheetDay))
    .filter((row) => row.placementId !== null && (batchId === null || row.batchId === batchId))
    .filter((row) => step === null || row.typed !== null || !answersLook(step, row.lastResult));
  return {
    batch: batchId === null ? null : (tables.batches.get(batchId)?.code ?? null),
    sheetDay,
    rows,
    nextQueenNumber: nextQueenNumber(tables, yearOfDay(desk.today)),
  };
}
