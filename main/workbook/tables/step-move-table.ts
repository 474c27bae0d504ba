import type { StepMove } from '../../../shared/model/batch.ts';
import { plain, type TableShape } from './define-table.ts';

export const stepMoveTable: TableShape<StepMove> = {
  name: 'step_move',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    step: plain('step'),
    movedTo: plain('moved_to'),
    reason: plain('reason'),
  },
};
