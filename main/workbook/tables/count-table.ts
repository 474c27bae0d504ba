import type { Count } from '../../../shared/model/batch.ts';
import { plain, type TableShape } from './define-table.ts';

export const countTable: TableShape<Count> = {
  name: 'count',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    barId: plain('bar_id'),
    stage: plain('stage'),
    cells: plain('cells'),
    countedOn: plain('counted_on'),
  },
};
