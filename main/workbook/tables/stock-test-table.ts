import type { StockTest } from '../../../shared/model/stock.ts';
import { plain, type TableShape } from './define-table.ts';

export const stockTestTable: TableShape<StockTest> = {
  name: 'stock_test',
  columns: {
    id: plain('id'),
    colonyId: plain('colony_id'),
    kind: plain('kind'),
    testedOn: plain('tested_on'),
    counted: plain('counted'),
    outOf: plain('out_of'),
    hours: plain('hours'),
    note: plain('note'),
  },
};
