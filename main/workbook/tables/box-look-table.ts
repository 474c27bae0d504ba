import type { BoxLook } from '../../../shared/model/look.ts';
import { plain, type TableShape } from './define-table.ts';

export const boxLookTable: TableShape<BoxLook> = {
  name: 'box_look',
  columns: {
    id: plain('id'),
    boxId: plain('box_id'),
    placementId: plain('placement_id'),
    lookedOn: plain('looked_on'),
    result: plain('result'),
    strength: plain('strength'),
    food: plain('food'),
    note: plain('note'),
  },
};
