import type { QueenMove } from '../../../shared/model/queen-story.ts';
import { plain, type TableShape } from './define-table.ts';

export const queenMoveTable: TableShape<QueenMove> = {
  name: 'queen_move',
  columns: {
    id: plain('id'),
    queenId: plain('queen_id'),
    movedOn: plain('moved_on'),
    place: plain('place'),
    colonyId: plain('colony_id'),
    goneTo: plain('gone_to'),
    way: plain('way'),
    price: plain('price'),
    note: plain('note'),
  },
};
