import type { QueenLine } from '../../../shared/contract/queens.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import type { Desk } from '../operation.ts';
import { queenLine } from './list-queens.ts';

/** Writes a queen, new or known. A number belongs to one queen for good. */
export function saveQueen(desk: Desk, queen: Queen): Result<QueenLine, Refusal> {
  return desk.workbook.change({ did: 'save-queen', queen: queen.number }, (tables) => {
    const other = tables.queens.where({ number: queen.number })[0];
    if (other && other.id !== queen.id)
      return refuse({ kind: 'queen-number-taken', field: 'number', number: queen.number });
    const { firstEggsOn, provedOn } = queen;
    if (firstEggsOn !== null && provedOn !== null && provedOn < firstEggsOn)
      return refuse({ kind: 'queen-dates-turned-round', field: 'provedOn', firstEggsOn, provedOn });
    if (tables.queens.get(queen.id)) tables.queens.update(queen);
    else tables.queens.insert(queen);
    return ok(queenLine(tables, queen));
  });
}
