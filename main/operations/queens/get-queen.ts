import type { z } from 'zod';
import type { MotherRef, QueenDetail, QueenId } from '../../../shared/contract/queens.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { headOn } from '../../engine/pedigree/hive-stays.ts';
import { motherOf } from '../../engine/pedigree/mother-lines.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { followUpLine } from '../follow-up-lines.ts';
import type { Desk } from '../operation.ts';
import { promiseLines } from '../promise-lines.ts';
import { QueenReader } from './queen-lines.ts';

/** One queen with her whole story; null when unknown. */
export function getQueen(
  { workbook: { tables }, today }: Desk,
  { queenId }: z.infer<typeof QueenId>,
): QueenDetail | null {
  const queen = tables.queens.get(queenId);
  if (!queen) return null;
  const reader = new QueenReader(tables);
  const moves = tables.queenMoves.where({ queenId }).toSorted((a, b) => (a.movedOn < b.movedOn ? 1 : -1));
  return {
    ...reader.line(queen),
    moves: moves.map((move) => ({
      ...move,
      hive: move.colonyId === null ? null : (tables.colonies.get(move.colonyId)?.code ?? null),
    })),
    feedback: tables.queenFeedback.where({ queenId }).toSorted((a, b) => (a.toldOn < b.toldOn ? 1 : -1)),
    promises: promiseLines(tables, queen),
    wishers: wishersIn(tables),
    followUps: tables.followUps
      .where({ queenId })
      .toSorted((a, b) => Number(a.doneOn !== null) - Number(b.doneOn !== null) || (a.dueOn < b.dueOn ? -1 : 1))
      .map((one) => followUpLine(tables, one, today)),
    mothers: mothersOf(tables, reader, queen),
    daughters: daughtersOf(reader, queenId),
    batches: batchesOf(tables, reader, queenId),
    receivers: receiversIn(tables),
  };
}

function mothersOf(tables: Tables, reader: QueenReader, queen: Queen): readonly MotherRef[] {
  const mothers: MotherRef[] = [];
  let at: Queen | null = queen;
  while (at !== null && mothers.length < 30) {
    const mother: MotherRef | null = reader.line(at).mother;
    if (mother === null || mothers.some((one) => one.id === mother.id)) break;
    mothers.push(mother);
    at = mother.kind === 'queen' ? tables.queens.get(mother.id) : null;
  }
  return mothers;
}

function daughtersOf(reader: QueenReader, queenId: string): readonly MotherRef[] {
  const { byId, stays } = reader.pedigree;
  return [...byId.values()]
    .filter((one) => {
      const mother = motherOf(one, stays);
      return mother?.kind === 'queen' && mother.id === queenId;
    })
    .flatMap((one) => reader.ref({ kind: 'queen', id: one.id }) ?? [])
    .toSorted((a, b) => compareCodes(a.name, b.name));
}

/** Batches whose breeder she headed when larvae were given, also those that gave no queen with a number. */
function batchesOf(tables: Tables, { pedigree }: QueenReader, queenId: string): QueenDetail['batches'] {
  if (!pedigree.stays.some((stay) => stay.queenId === queenId)) return [];
  return tables.batches
    .all()
    .filter(
      (batch) =>
        batch.breederId !== null &&
        headOn(pedigree.stays, batch.breederId, timetableOf(tables, batch).larvaeGivenOn) === queenId,
    )
    .map(({ id, code }) => ({ id, code }));
}

const wishersIn = (tables: Tables): readonly string[] => [
  ...new Set(
    tables.wishes
      .where({ settledOn: null })
      .toSorted((a, b) => (a.wantedOn < b.wantedOn ? -1 : 1))
      .flatMap(({ forWhom }) => forWhom ?? []),
  ),
];

const receiversIn = (tables: Tables): readonly string[] =>
  [...new Set(tables.queenMoves.all().flatMap((move) => move.goneTo ?? []))].toSorted((a, b) => a.localeCompare(b));
