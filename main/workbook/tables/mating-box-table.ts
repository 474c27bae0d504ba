import type { MatingBox } from '../../../shared/model/mating-box.ts';
import { plain, type TableShape } from './define-table.ts';

export const matingBoxTable: TableShape<MatingBox> = {
  name: 'mating_box',
  columns: {
    id: plain('id'),
    code: plain('code'),
    yardId: plain('yard_id'),
    row: plain('row'),
    walkOrder: plain('walk_order'),
    boxType: plain('box_type'),
    note: plain('note'),
    retiredOn: plain('retired_on'),
  },
};
