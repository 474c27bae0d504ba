import { expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { getHive } from '../../../../main/operations/hives/get-hive.ts';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aHiveLook } from '../../../builders/mating-box.ts';
import { aDeskWithBatch, aDeskWithBoxes, aStart, onDay } from '../../../builders/running-batch.ts';

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

test('its coming days name the jobs on this hive, not those on its boxes or on the other hive', () => {
  const desk = onDay(aDeskWithBatch(), '2026-05-01');
  const jobs = (colonyId: string) =>
    getHive(desk, { colonyId })?.dayLine.flatMap((day) => day.jobs.map((job) => [day.on, job])) ?? [];
  expect(jobs('h12')).toEqual([
    ['2026-05-03', 'make-queenless'],
    ['2026-05-04', 'give-larvae'],
    ['2026-05-05', 'count-taken'],
    ['2026-05-08', 'check-own-cells'],
    ['2026-05-09', 'count-sealed'],
  ]);
  mustOk(markStep(desk, { id: 'm', batchId: 'batch-1', step: 'make-queenless', doneOn: '2026-05-03', note: null }));
  expect(jobs('h12').map(([, job]) => job)).not.toContain('make-queenless');
  expect(jobs('h03').map(([, job]) => job)).not.toContain('give-larvae');
});

test('newest batches and looks come first; a builder is free on the day its cells leave', () => {
  const desk = aDeskWithBoxes();
  mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, breederId: 'h12' })));
  mustOk(
    startBatch(
      desk,
      aStart({ id: 'batch-3', newBreeder: null, newBuilder: null, builderId: 'h12', anchorOn: '2026-06-20' }),
    ),
  );
  for (const [id, lookedOn] of [
    ['a', '2026-04-01'],
    ['b', '2026-05-01'],
  ] as const)
    mustOk(recordHiveLook(desk, aHiveLook({ id, colonyId: 'h12', lookedOn })));
  const hive = getHive(desk, { colonyId: 'h12' });
  expect(hive?.batches[0]?.id).toBe('batch-3');
  expect(hive?.looks.map((look) => look.id)).toEqual(['b', 'a']);
  expect(hive?.rolesBySeason).toEqual([{ season: 2026, roles: ['builder'] }]);
  expect(getHive(aDeskWithBoxes(), { colonyId: 'h12' })?.freeFrom).toBeNull();
});

test('answers null for a hive that is not there', () => {
  expect(getHive(aDeskWithBoxes(), { colonyId: 'gone' })).toBeNull();
});
