import { expect, test } from 'vitest';
import { getHiveRecords } from '../../../../main/operations/hives/get-hive-records.ts';
import { moveHive } from '../../../../main/operations/hives/move-hive.ts';
import { recordScore } from '../../../../main/operations/hives/record-score.ts';
import { recordTest } from '../../../../main/operations/hives/record-test.ts';
import { recordTreatment } from '../../../../main/operations/hives/record-treatment.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aScore, aTest, aTreatment } from '../../../builders/stock.ts';
import { aYard } from '../../../builders/yard.ts';

test('tells everything written down about one hive, newest first, and of no other', () => {
  const desk = aDesk({ today: '2026-09-01' });
  fill(desk, ({ colonies, yards, queens }) => {
    yards.insert(aYard());
    colonies.insert(aColony());
    colonies.insert(aColony({ id: 'other', code: 'H02' }));
    queens.insert(aQueen({ number: '25-001', bornIn: 2025 }));
    queens.insert(aQueen({ id: 'queen-2', number: '25-002', bornIn: 2025 }));
  });
  mustOk(recordScore(desk, aScore()));
  mustOk(recordScore(desk, aScore({ id: 's2', scoredOn: '2026-06-10', score: 2.5 })));
  mustOk(recordScore(desk, aScore({ id: 's3', colonyId: 'other', score: 1 })));
  mustOk(recordTest(desk, aTest()));
  mustOk(recordTest(desk, aTest({ id: 't2', testedOn: '2026-06-01', kind: 'mite-wash', counted: 3, outOf: 300 })));
  mustOk(recordTreatment(desk, aTreatment()));
  const to = { colonyId: 'colony-1', place: null, paper: null, note: null };
  mustOk(moveHive(desk, { id: 'm', movedOn: '2026-04-01', toYardId: 'yard-1', ...to }));
  const into = { place: 'in-hive', colonyId: 'colony-1', way: null, goneTo: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'q1', queenId: 'queen-1', movedOn: '2025-08-01', ...into }));
  mustOk(moveQueen(desk, { id: 'q2', queenId: 'queen-2', movedOn: '2026-07-01', ...into }));
  const records = getHiveRecords(desk, { colonyId: 'colony-1' });
  expect(records.scores.map((one) => one.id)).toEqual(['s2', 'score-1']);
  expect(records.summary.gentleness).toEqual({ n: 2, value: 3, enough: false });
  expect(records.tests.map(({ id, figure }) => [id, figure])).toEqual([
    ['t2', 1],
    ['test-1', 0.84],
  ]);
  expect(records.strictlyHygienic).toBeNull();
  expect(records.treatments).toEqual([aTreatment()]);
  expect(records.moves.map(({ from, to: there }) => [from, there])).toEqual([[null, 'Orchard']]);
  expect(records.queens).toEqual([
    { id: 'queen-2', number: '25-002', from: '2026-07-01', until: null },
    { id: 'queen-1', number: '25-001', from: '2025-08-01', until: '2026-07-01' },
  ]);
});
