import type { QueenPromise } from '../../../shared/model/queen-promise.ts';
import { plain, type TableShape } from './define-table.ts';

export const queenPromiseTable: TableShape<QueenPromise> = {
  name: 'queen_promise',
  columns: {
    id: plain('id'),
    queenId: plain('queen_id'),
    promisedOn: plain('promised_on'),
    promisedTo: plain('promised_to'),
    wantedOn: plain('wanted_on'),
    note: plain('note'),
  },
};
