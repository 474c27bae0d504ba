import type { QueenLine } from '../../../shared/contract/queens.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { Desk } from '../operation.ts';
import { QueenReader } from './queen-lines.ts';

/** The register, newest number first. */
export function listQueens({ workbook: { tables } }: Desk): readonly QueenLine[] {
  const reader = new QueenReader(tables);
  return tables.queens
    .all()
    .toSorted((a, b) => compareCodes(b.number, a.number))
    .map((queen) => reader.line(queen));
}
