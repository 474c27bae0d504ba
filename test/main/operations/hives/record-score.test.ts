import { expect, test } from 'vitest';
import { recordScore } from '../../../../main/operations/hives/record-score.ts';
import { StockScore } from '../../../../shared/model/stock.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';
import { aScore } from '../../../builders/stock.ts';

test('keeps a score; the same trait and day again corrects it, another day is another score', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(recordScore(desk, aScore()));
  mustOk(recordScore(desk, aScore({ id: 'other', score: 2 })));
  mustOk(recordScore(desk, aScore({ id: 'next', scoredOn: '2026-06-10' })));
  mustOk(recordScore(desk, aScore({ id: 'calm', trait: 'calmness' })));
  expect(desk.workbook.tables.stockScores.all().map(({ id, score }) => [id, score])).toEqual([
    ['score-1', 2],
    ['next', 3.5],
    ['calm', 3.5],
  ]);
});

test('refuses a hive that is gone; the scale has half points from 1 to 4 and nothing between', () => {
  expect(refusalOf(recordScore(aDesk(), aScore()))).toEqual({ kind: 'hive-missing', field: 'colonyId' });
  const fits = (score: number) => StockScore.safeParse(aScore({ score })).success;
  expect([1, 1.5, 4].every(fits)).toBe(true);
  expect([0.5, 4.5, 3.2, Number.NaN].some(fits)).toBe(false);
});
