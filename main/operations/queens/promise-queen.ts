import type { z } from 'zod';
import type { PromiseQueen } from '../../../shared/contract/queens.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { QueenPromise } from '../../../shared/model/queen-promise.ts';
import type { Desk } from '../operation.ts';
import { openPromise } from '../promise-lines.ts';

/**
 * Writes down to whom a queen is promised; the same id again corrects it. A queen is promised to one at a time, and only
 * while she is still here.
 */
export function promiseQueen({ workbook }: Desk, promise: z.infer<typeof PromiseQueen>): Result<QueenPromise, Refusal> {
  const number = workbook.tables.queens.get(promise.queenId)?.number ?? '';
  return workbook.change({ did: 'promise-queen', queen: number, to: promise.promisedTo }, (tables) => {
    const queen = tables.queens.get(promise.queenId);
    if (!queen) return refuse({ kind: 'queen-missing' });
    if (promise.wantedOn !== null && promise.wantedOn < promise.promisedOn)
      return refuse({ kind: 'promise-days-turned-round', field: 'wantedOn', promisedOn: promise.promisedOn });
    const other = openPromise(tables, queen);
    if (other && other.id !== promise.id)
      return refuse({ kind: 'queen-promised', field: 'promisedTo', queen: number, to: other.promisedTo });
    const known = tables.queenPromises.get(promise.id) !== null;
    if (!known && !IS_HERE.includes(queen.place)) return refuse({ kind: 'queen-not-here', queen: number });
    if (known) tables.queenPromises.update(promise);
    else tables.queenPromises.insert(promise);
    return ok(promise);
  });
}

const IS_HERE: readonly string[] = ['in-box', 'caged', 'in-hive'];
