import type { ColonyMove } from '../../../shared/model/hive-record.ts';
import { plain, type TableShape } from './define-table.ts';

export const colonyMoveTable: TableShape<ColonyMove> = {
  name: 'colony_move',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    movedOn: plain('moved_on'),
    fromYardId: plain('from_yard_id'),
    toYardId: plain('to_yard_id'),
    place: plain('place'),
    paper: plain('paper'),
    note: plain('note'),
  },
};
