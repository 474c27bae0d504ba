import type { Loss } from '../../../shared/model/loss.ts';
import { plain, type TableShape } from './define-table.ts';

export const lossTable: TableShape<Loss> = {
  name: 'loss',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    stage: plain('stage'),
    reason: plain('reason'),
    cells: plain('cells'),
  },
};
