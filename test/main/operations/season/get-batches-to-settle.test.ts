import { expect, test } from 'vitest';
import { getBatchesToSettle } from '../../../../main/operations/season/get-batches-to-settle.ts';
import { aDeskWithCounted } from '../../../builders/counted-batches.ts';

const ask = {
  factor: 'method',
  and: null,
  allowingFor: null,
  ahead: 1,
  season: null,
  leaveOutPractice: false,
  stage: 'take',
} as const;
const takes = (grafting: readonly number[], edge: readonly number[]) =>
  aDeskWithCounted([
    ...grafting.map((taken) => ({ method: 'larva-grafting' as const, tally: { given: 30, taken } })),
    ...edge.map((taken) => ({ tally: { given: 30, taken } })),
  ]);

test('a clear difference on few batches needs few more, a small one more than can be asked for', async () => {
  const clear = await getBatchesToSettle(takes([25, 24], [18, 19]), ask);
  expect(clear?.more).toBeGreaterThanOrEqual(1);
  expect(clear?.more).toBeLessThanOrEqual(6);
  expect(await getBatchesToSettle(takes([21, 20], [20, 21]), ask)).toEqual({ more: null, most: 10 });
});

test('has nothing to say when it is settled, or when there is one group', async () => {
  expect(await getBatchesToSettle(takes([27, 28, 27, 28], [10, 11, 10, 11]), ask)).toBeNull();
  expect(await getBatchesToSettle(takes([27, 28], []), ask)).toBeNull();
});
