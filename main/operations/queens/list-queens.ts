import { yearColour } from '../../../shared/biology/year-colour.ts';
import type { QueenLine } from '../../../shared/contract/queens.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';

/** The register, newest number first. */
export function listQueens({ workbook: { tables } }: Desk): readonly QueenLine[] {
  return tables.queens
    .all()
    .toSorted((a, b) => compareCodes(b.number, a.number))
    .map((queen) => queenLine(tables, queen));
}

export function queenLine(tables: Tables, queen: Queen): QueenLine {
  const batch = queen.batchId === null ? null : tables.batches.get(queen.batchId);
  const colony = (id: string | null) => (id === null ? null : (tables.colonies.get(id)?.code ?? null));
  return {
    queen,
    yearColour: yearColour(queen.bornIn),
    batch: batch?.code ?? null,
    breeder: colony(queen.breederId),
    box: queen.boxId === null ? null : (tables.boxes.get(queen.boxId)?.code ?? null),
    hive: colony(queen.colonyId),
    bornOn: batch ? isoOfDay(timetableOf(tables, batch).emergence.expected) : null,
  };
}
