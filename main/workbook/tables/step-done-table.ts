import type { StepDone } from '../../../shared/model/batch.ts';
import { plain, type TableShape } from './define-table.ts';

export const stepDoneTable: TableShape<StepDone> = {
  name: 'step_done',
  columns: {
    id: plain('id'),
    batchId: plain('batch_id'),
    step: plain('step'),
    doneOn: plain('done_on'),
    note: plain('note'),
  },
};
