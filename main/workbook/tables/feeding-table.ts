import type { Feeding } from '../../../shared/model/feeding.ts';
import { plain, type TableShape } from './define-table.ts';

export const feedingTable: TableShape<Feeding> = {
  name: 'feeding',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    boxId: plain('box_id'),
    fedOn: plain('fed_on'),
    feed: plain('feed'),
    ownFeed: plain('own_feed'),
    litres: plain('litres'),
    kilograms: plain('kilograms'),
    note: plain('note'),
  },
};
