import type { HiveLook } from '../../../shared/model/look.ts';
import { plain, type TableShape } from './define-table.ts';

export const hiveLookTable: TableShape<HiveLook> = {
  name: 'hive_look',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    lookedOn: plain('looked_on'),
    strength: plain('strength'),
    food: plain('food'),
    note: plain('note'),
  },
};
