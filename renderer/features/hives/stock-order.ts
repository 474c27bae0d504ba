import type { StockLine, TraitFigure } from '../../../shared/contract/stock.ts';

export const STOCK_COLUMNS = [
  'hive',
  'line',
  'queen',
  'gentleness',
  'calmness',
  'swarming',
  'pin',
  'mites',
  'honey',
] as const;
export type StockColumn = (typeof STOCK_COLUMNS)[number];

export interface StockOrder {
  readonly by: StockColumn;
  /** Best first for figures, A first for words. */
  readonly turned: boolean;
}

/** What a column is ordered by: figures that rest on too little have no place in an order, so they are null. */
function keyOf(line: StockLine, by: StockColumn): number | string | null {
  const sure = ({ value, enough }: TraitFigure) => (enough ? value : null);
  switch (by) {
    case 'hive':
      return line.code;
    case 'line':
      return line.motherLine;
    case 'queen':
      return line.queen?.number ?? null;
    case 'pin':
      return sure(line.pin);
    case 'mites': {
      const mites = sure(line.mites);
      return mites === null ? null : -mites;
    }
    case 'honey':
      return line.honey?.enough ? line.honey.kilograms - line.honey.mean : null;
    default:
      return sure(line.traits[by]);
  }
}

/** The table in the chosen order. Hives of which too little is known stand last either way, in the order of their codes. */
export function inStockOrder(lines: readonly StockLine[], { by, turned }: StockOrder): readonly StockLine[] {
  const sign = turned ? -1 : 1;
  return lines.toSorted((a, b) => {
    const [one, other] = [keyOf(a, by), keyOf(b, by)];
    if (one === null || other === null) return Number(one === null) - Number(other === null);
    if (typeof one === 'number' && typeof other === 'number') return sign * (other - one);
    return sign * String(one).localeCompare(String(other), 'en', { numeric: true });
  });
}

/** A second press on a column turns it round. */
export const nextOrder = (order: StockOrder, by: StockColumn): StockOrder => ({
  by,
  turned: order.by === by && !order.turned,
});
