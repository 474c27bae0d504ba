import type { Treatment } from '../../../shared/model/hive-record.ts';
import { plain, type TableShape } from './define-table.ts';

export const treatmentTable: TableShape<Treatment> = {
  name: 'treatment',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    fromOn: plain('from_on'),
    toOn: plain('to_on'),
    product: plain('product'),
    amount: plain('amount'),
    reason: plain('reason'),
    paper: plain('paper'),
    note: plain('note'),
  },
};
