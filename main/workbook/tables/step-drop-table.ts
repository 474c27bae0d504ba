import type { StepDrop } from '../../../shared/model/batch.ts';
import { plain, type TableShape } from './define-table.ts';

export const stepDropTable: TableShape<StepDrop> = {
  name: 'step_drop',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    step: plain('step'),
    droppedOn: plain('dropped_on'),
    reason: plain('reason'),
  },
};
