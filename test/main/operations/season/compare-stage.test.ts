import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { compareStage } from '../../../../main/operations/season/compare-stage.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aRow, aStart, barOf } from '../../../builders/running-batch.ts';

const ask = { factor: 'method', season: null, leaveOutPractice: false, stage: 'take' } as const;

/** Batches by two methods with the given takes of 30, a season apart so that no builder is in use. */
function aDeskWithTakes(takes: Readonly<Record<'larva-grafting' | 'cut-comb-edge', readonly number[]>>) {
  const desk = aDesk({ today: '2026-12-01' });
  let year = 2000;
  for (const [method, list] of Object.entries(takes))
    for (const taken of list) {
      year += 1;
      const id = `b${year}`;
      const start = {
        id,
        method: method as 'cut-comb-edge',
        anchorOn: `${year}-05-04`,
        newBreeder: null,
        newBuilder: null,
      };
      mustOk(startBatch(desk, aStart(start)));
      mustOk(
        recordBarCounts(
          desk,
          aRow(desk, { batchId: id, barId: barOf(desk, id), countedOn: `${year}-05-05`, given: 30, taken }),
        ),
      );
    }
  return desk;
}

test('says so when a clear difference rests on many batches', () => {
  const { groups, lead } = compareStage(
    aDeskWithTakes({ 'larva-grafting': [27, 26, 28, 27, 26], 'cut-comb-edge': [12, 15, 13, 14, 12] }),
    ask,
  );
  expect(groups.map((group) => group.groupId)).toEqual(['larva-grafting', 'cut-comb-edge']);
  expect(lead).toMatchObject({ better: 'larva-grafting', certainty: 'as-good-as-certain', isBest: true });
});

test('says as readily that two cannot be told apart, and names no best on one batch', () => {
  const alike = compareStage(aDeskWithTakes({ 'larva-grafting': [20, 25, 22], 'cut-comb-edge': [23, 20, 24] }), ask);
  expect(alike.lead).toMatchObject({ certainty: 'cannot-tell', isBest: false });
  const few = compareStage(aDeskWithTakes({ 'larva-grafting': [29], 'cut-comb-edge': [5] }), ask);
  expect(few.lead).toMatchObject({ better: 'larva-grafting', isBest: false });
});

test('draws a single batch towards the others', () => {
  const { groups } = compareStage(aDeskWithTakes({ 'larva-grafting': [30], 'cut-comb-edge': [18, 20, 19] }), ask);
  expect(groups[0]?.mean).toBeLessThan(0.97);
  expect(groups[0]?.upper).toBeLessThan(1);
});

test('has nothing to say without counts, and no lead with one group', () => {
  expect(compareStage(aDesk(), ask)).toEqual({ stage: 'take', groups: [], lead: null });
  expect(compareStage(aDeskWithTakes({ 'larva-grafting': [20], 'cut-comb-edge': [] }), ask).lead).toBeNull();
});
