import type { Wish } from '../../../shared/model/wish.ts';
import { plain, type TableShape } from './define-table.ts';

export const wishTable: TableShape<Wish> = {
  name: 'wish',
  columns: {
    id: plain('id'),
    forWhom: plain('for_whom'),
    queens: plain('queens'),
    wantedOn: plain('wanted_on'),
    settledOn: plain('settled_on'),
    note: plain('note'),
  },
};
