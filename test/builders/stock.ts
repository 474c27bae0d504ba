import type { Treatment } from '../../shared/model/hive-record.ts';
import type { StockScore, StockTest } from '../../shared/model/stock.ts';

export const aScore = (changes: Partial<StockScore> = {}): StockScore => ({
  id: 'score-1',
  colonyId: 'colony-1',
  trait: 'gentleness',
  scoredOn: '2026-05-10',
  score: 3.5,
  note: null,
  ...changes,
});

export const aTest = (changes: Partial<StockTest> = {}): StockTest => ({
  id: 'test-1',
  colonyId: 'colony-1',
  kind: 'pin-test',
  testedOn: '2026-05-10',
  counted: 42,
  outOf: 50,
  hours: 10,
  note: null,
  ...changes,
});

export const aTreatment = (changes: Partial<Treatment> = {}): Treatment => ({
  id: 'treatment-1',
  colonyId: 'colony-1',
  fromOn: '2026-08-01',
  toOn: null,
  product: 'organic acid',
  amount: null,
  reason: 'mites',
  paper: null,
  note: null,
  ...changes,
});
