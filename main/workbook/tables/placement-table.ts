import type { Placement } from '../../../shared/model/mating-box.ts';
import { plain, type TableShape } from './define-table.ts';

export const placementTable: TableShape<Placement> = {
  name: 'placement',
  columns: {
    id: plain('id'),
    boxId: plain('box_id'),
    batchId: plain('batch_id'),
    barId: plain('bar_id'),
    placedOn: plain('placed_on'),
    endedOn: plain('ended_on'),
    endReason: plain('end_reason'),
  },
};
