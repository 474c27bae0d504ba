import type { StockScore } from '../../../shared/model/stock.ts';
import { plain, type TableShape } from './define-table.ts';

export const stockScoreTable: TableShape<StockScore> = {
  name: 'stock_score',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    trait: plain('trait'),
    scoredOn: plain('scored_on'),
    score: plain('score'),
    note: plain('note'),
  },
};
