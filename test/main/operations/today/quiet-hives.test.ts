import { expect, test } from 'vitest';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { answerFollowUp } from '../../../../main/operations/today/answer-follow-up.ts';
import { getToday } from '../../../../main/operations/today/get-today.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { onDay } from '../../../builders/running-batch.ts';

// Brought in on 1 June in a candy cage: looked at on day 3, then left alone until eggs are looked for on day 7 (Büchler et
// al. 2013, 2.3.4; the days are common practice, no source).
test('a hive is left alone between a queen’s checks, and not on the days of them', () => {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ colonies, queens }) => {
    colonies.insert(aColony());
    queens.insert(aQueen({ number: '25-001', bornIn: 2025, place: 'caged' }));
  });
  const to = { place: 'in-hive', colonyId: 'colony-1', goneTo: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2026-06-01', way: 'candy-cage', ...to }));
  const quiet = (day: string) =>
    getToday(onDay(desk, day)).quietHives.map(({ code, queen, until }) => [code, queen, until]);
  expect(quiet('2026-06-01')).toEqual([['H01', '25-001', '2026-06-03']]);
  expect(quiet('2026-06-03')).toHaveLength(1);
  expect(quiet('2026-06-04')).toEqual([]);
  const cage = desk.workbook.tables.followUps.where({ what: 'check-release' })[0]?.id ?? '';
  mustOk(answerFollowUp(desk, { followUpId: cage, doneOn: '2026-06-04', answer: 'well', note: null }));
  expect(quiet('2026-06-05')).toEqual([['H01', '25-001', '2026-06-07']]);
  expect(quiet('2026-06-08')).toEqual([]);
  const eggs = desk.workbook.tables.followUps.where({ what: 'check-eggs' })[0]?.id ?? '';
  mustOk(answerFollowUp(desk, { followUpId: eggs, doneOn: '2026-06-08', answer: 'well', note: null }));
  expect(quiet('2026-06-09')).toEqual([]);
});
