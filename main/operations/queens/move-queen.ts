import type { z } from 'zod';
import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import type { MoveQueen, QueenMoved } from '../../../shared/contract/queens.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { headOn } from '../../engine/pedigree/hive-stays.ts';
import { comparedName } from '../../engine/queens/same-name.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { openPromise } from '../promise-lines.ts';
import { freeHerBox, writeQueenMove } from '../queen-moves.ts';
import { staysOf } from '../queen-pedigree.ts';
import { QueenReader } from './queen-lines.ts';

type Move = z.infer<typeof MoveQueen>;

/**
 * A queen is brought to a hive, given, sold, caged, or is dead or lost. Where she still sat in her box, the box is freed
 * in the same step; where she goes into a hive, the checks that follow appear. The same id again corrects the move.
 */
export function moveQueen(desk: Desk, move: Move): Result<QueenMoved, Refusal> {
  const number = desk.workbook.tables.queens.get(move.queenId)?.number ?? '';
  return desk.workbook.change({ did: 'move-queen', queen: number, place: move.place }, (tables) => {
    const queen = tables.queens.get(move.queenId);
    if (!queen) return refuse({ kind: 'queen-missing' });
    const bornOn = new QueenReader(tables).line(queen).bornOn;
    const refusal = placeRefusal(tables, move) ?? dayRefusal(tables, queen, move);
    if (refusal) return refuse(refusal);
    const notices = moveNotices(desk, tables, queen, move, bornOn);
    freeHerBox(tables, queen, move);
    const moved = writeQueenMove(tables, desk.ids, queen, move);
    return ok({ line: new QueenReader(tables).line(moved), notices });
  });
}

function placeRefusal(tables: Tables, { place, colonyId }: Move): Refusal | null {
  if (place !== 'in-hive') return null;
  if (colonyId === null) return { kind: 'hive-for-queen-needed', field: 'colonyId' };
  return tables.colonies.get(colonyId) ? null : { kind: 'hive-missing', field: 'colonyId' };
}

/** A queen may come out sooner than expected, but not before the first day on which any can. */
function dayRefusal(tables: Tables, { batchId }: Queen, { movedOn }: Move): Refusal | null {
  const batch = batchId === null ? null : tables.batches.get(batchId);
  if (!batch) return null;
  const bornOn = isoOfDay(timetableOf(tables, batch).emergence.earliest);
  return movedOn < bornOn ? { kind: 'queen-moved-before-birth', field: 'movedOn', bornOn } : null;
}

const LEAVES_YOUNG: readonly string[] = ['in-hive', 'given', 'sold'];

function moveNotices(
  desk: Desk,
  tables: Tables,
  queen: Queen,
  { place, colonyId, movedOn, goneTo }: Move,
  bornOn: string | null,
): readonly Notice[] {
  const notices: Notice[] = [];
  const on = dayOfIso(movedOn);
  if (on > desk.today) notices.push({ kind: 'day-in-future', field: 'movedOn', day: movedOn });
  if (!LEAVES_YOUNG.includes(place)) return notices;
  const age = bornOn === null ? null : on - dayOfIso(bornOn);
  const promise = place === 'in-hive' ? null : openPromise(tables, queen);
  if (promise && goneTo !== null && comparedName(goneTo) !== comparedName(promise.promisedTo))
    notices.push({ kind: 'queen-promised-to-other', queen: queen.number, to: promise.promisedTo });
  if (queen.provedOn === null && age !== null) notices.push({ kind: 'queen-not-proved', queen: queen.number });
  if (age !== null && age < BOX_TURNAROUND.ageToTake.value)
    notices.push({ kind: 'young-queen', queen: queen.number, days: age });
  const head = place === 'in-hive' && colonyId !== null ? headOn(staysOf(tables), colonyId, on) : null;
  const other = head === null || head === queen.id ? null : tables.queens.get(head);
  if (other) {
    const hive = tables.colonies.get(colonyId ?? '')?.code ?? '';
    notices.push({ kind: 'hive-has-queen', hive, queen: other.number });
  }
  return notices;
}
