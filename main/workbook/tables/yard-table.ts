import type { Yard } from '../../../shared/model/yard.ts';
import { plain, type TableShape } from './define-table.ts';

export const yardTable: TableShape<Yard> = {
  name: 'yard',
  columns: {
    id: plain('id'),
    name: plain('name'),
    note: plain('note'),
  },
};
