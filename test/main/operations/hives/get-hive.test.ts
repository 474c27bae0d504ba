import { expect, test } from 'vitest';
import { getHive } from '../../../../main/operations/hives/get-hive.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

test('shows a builder’s figures with what they rest on, its coming days and when it is free', () => {
  const hive = getHive(onDay(aDeskWithBoxes(), '2026-05-08'), { colonyId: 'h12' });
  expect(hive?.asBuilder).toEqual([
    expect.objectContaining({
      season: 2026,
      batches: 1,
      take: expect.objectContaining({ successes: 9, of: 12, batches: 1, rate: 0.75 }),
    }),
  ]);
  expect(hive?.asBuilder[0]?.mating?.rate).toBeNull();
  expect(hive?.asBreeder).toEqual([]);
  expect(hive?.dayLine).toHaveLength(28);
  expect(hive?.dayLine.filter((day) => day.handsOff).map((day) => day.on)).toEqual([
    '2026-05-10',
    '2026-05-11',
    '2026-05-12',
  ]);
  expect(hive?.freeFrom).toBe('2026-05-14');
});

test('answers null for a hive that is not there', () => {
  expect(getHive(aDeskWithBoxes(), { colonyId: 'gone' })).toBeNull();
});
