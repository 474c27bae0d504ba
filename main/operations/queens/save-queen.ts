import type { QueenLine } from '../../../shared/contract/queens.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { isOwnAncestor } from '../../engine/pedigree/mother-lines.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { freeHerBox } from '../queen-moves.ts';
import { readPedigree } from '../queen-pedigree.ts';
import { QueenReader } from './queen-lines.ts';

/** Writes a queen, new or known. A number belongs to one queen for good; a new place is kept as a move of hers. */
export function saveQueen(desk: Desk, queen: Queen): Result<QueenLine, Refusal> {
  return desk.workbook.change({ did: 'save-queen', queen: queen.number }, (tables) => {
    const refusal = numberRefusal(tables, queen) ?? datesRefusal(queen) ?? motherRefusal(tables, queen);
    if (refusal) return refuse(refusal);
    const known = tables.queens.get(queen.id);
    const saved = queen.place === 'in-box' ? queen : { ...queen, boxId: null };
    if (known) tables.queens.update(saved);
    else tables.queens.insert(saved);
    if (!known || known.place !== queen.place || known.colonyId !== queen.colonyId || known.goneTo !== queen.goneTo)
      keepMove(desk, tables, saved, known === null);
    if (known?.place === 'in-box') freeHerBox(tables, known, { place: queen.place, movedOn: isoOfDay(desk.today) });
    return ok(new QueenReader(tables).line(saved));
  });
}

function numberRefusal(tables: Tables, { id, number }: Queen): Refusal | null {
  const other = tables.queens.where({ number })[0];
  return other && other.id !== id ? { kind: 'queen-number-taken', field: 'number', number } : null;
}

const datesRefusal = ({ firstEggsOn, provedOn }: Queen): Refusal | null =>
  firstEggsOn !== null && provedOn !== null && provedOn < firstEggsOn
    ? { kind: 'queen-dates-turned-round', field: 'provedOn', firstEggsOn, provedOn }
    : null;

function motherRefusal(tables: Tables, { id, motherId }: Queen): Refusal | null {
  if (motherId === null) return null;
  const mother = tables.queens.get(motherId);
  if (!mother) return { kind: 'queen-missing' };
  const { byId, stays } = readPedigree(tables);
  return isOwnAncestor(id, motherId, byId, stays)
    ? { kind: 'queen-own-ancestor', field: 'motherId', number: mother.number }
    : null;
}

/** A place said in the form has no day of its own: a new queen was there since she was marked, a changed place since today. */
function keepMove({ ids, today }: Desk, tables: Tables, queen: Queen, isNew: boolean): void {
  const { id: queenId, place, colonyId, goneTo, markedOn } = queen;
  tables.queenMoves.insert({
    id: ids.next(),
    queenId,
    movedOn: (isNew ? markedOn : null) ?? isoOfDay(today),
    place,
    colonyId: place === 'in-hive' ? colonyId : null,
    goneTo,
    way: null,
    price: null,
    note: null,
  });
}
