import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';

/** All boxes in walking order, retired ones last. */
export function listBoxes({ workbook, today }: Desk): readonly BoxLine[] {
  const reader = new BoxReader(workbook.tables, today);
  return workbook.tables.boxes
    .all()
    .toSorted((a, b) => Number(a.retiredOn !== null) - Number(b.retiredOn !== null) || a.walkOrder - b.walkOrder)
    .map((box) => reader.line(box));
}
