import type { Bar } from '../../../shared/model/batch.ts';
import { plain, type TableShape } from './define-table.ts';

export const barTable: TableShape<Bar> = {
  name: 'bar',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    number: plain('number'),
  },
};
