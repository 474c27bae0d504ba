import { expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { getHive } from '../../../../main/operations/hives/get-hive.ts';
import { listHives } from '../../../../main/operations/hives/list-hives.ts';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aFeeding } from '../../../builders/feeding.ts';
import { aHiveLook } from '../../../builders/mating-box.ts';
import { aQueen } from '../../../builders/queen.ts';
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
  expect([hive?.dayLine[0]?.on, hive?.dayLine.at(-1)?.on]).toEqual(['2026-05-01', '2026-06-04']);
  expect(hive?.dayLine.filter((day) => day.handsOff).map((day) => day.on)).toEqual([
    '2026-05-10',
    '2026-05-11',
    '2026-05-12',
  ]);
  expect(hive?.freeFrom).toBe('2026-05-14');
});

test('its days say when it was looked into and when it was fed', () => {
  const desk = onDay(aDeskWithBatch(), '2026-05-10');
  fill(desk, ({ hiveLooks, feedings }) => {
    hiveLooks.insert(aHiveLook({ colonyId: 'h12', lookedOn: '2026-05-04' }));
    feedings.insert(aFeeding({ colonyId: 'h12', fedOn: '2026-05-09' }));
  });
  const line = getHive(desk, { colonyId: 'h12' })?.dayLine ?? [];
  expect(line.filter((day) => day.looked).map((day) => day.on)).toEqual(['2026-05-04']);
  expect(line.filter((day) => day.fed).map((day) => day.on)).toEqual(['2026-05-09']);
  // A job of a day that is past is no job on that day.
  expect(line.filter((day) => day.on < '2026-05-10').flatMap((day) => day.jobs)).toEqual([]);
});

// A candy cage is looked at on day 3 and left alone until then (Büchler et al. 2013, 2.3.4; common practice, no source).
test('a hive with a queen just brought in is to be left alone, in the list, on its page and in its days', () => {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ colonies, queens }) => {
    colonies.insert(aColony());
    queens.insert(aQueen({ number: '25-001', bornIn: 2025, place: 'caged' }));
  });
  const to = { place: 'in-hive', colonyId: 'colony-1', goneTo: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2026-06-01', way: 'candy-cage', ...to }));
  const hive = getHive(desk, { colonyId: 'colony-1' });
  expect(hive?.newQueen).toEqual({ until: '2026-06-03', queen: '25-001' });
  expect(hive?.dayLine.filter((day) => day.newQueen === '25-001').map((day) => day.on)).toEqual([
    '2026-06-01',
    '2026-06-02',
    '2026-06-03',
  ]);
  expect(listHives(desk).hives[0]?.newQueen?.until).toBe('2026-06-03');
  expect(getHive(onDay(desk, '2026-06-04'), { colonyId: 'colony-1' })?.newQueen).toBeNull();
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

test('names the queen of a hive, her mother, and the hives that are kin to it', () => {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ colonies, queens }) => {
    for (const code of ['H10', 'H02', 'H03', 'H04', 'H05'])
      colonies.insert(aColony({ id: code, code, name: null, motherLine: code === 'H05' ? 'Anna' : null }));
    colonies.insert(aColony({ id: 'gone', code: 'H01', endedOn: '2025-11-01' }));
    queens.insert(aQueen({ id: 'old', number: '24-001', bornIn: 2024 }));
    for (const id of ['one', 'two', 'three', 'ended'])
      queens.insert(aQueen({ id, number: `25-00${id.length}${id[0]}`, bornIn: 2025, motherId: 'old' }));
    queens.insert(aQueen({ id: 'grand', number: '26-001', motherId: 'one' }));
  });
  const rest = { place: 'in-hive', way: null, goneTo: null, price: null, note: null } as const;
  for (const [queenId, colonyId] of [
    ['old', 'H03'],
    ['one', 'H02'],
    ['two', 'H10'],
    ['three', 'H04'],
    ['grand', 'H05'],
    ['ended', 'gone'],
  ] as const)
    mustOk(moveQueen(desk, { id: `to-${queenId}`, queenId, colonyId, movedOn: '2026-05-20', ...rest }));
  expect(getHive(desk, { colonyId: 'H02' })?.relatives).toEqual({
    queen: { id: 'one', number: '25-003o' },
    mother: { kind: 'queen', id: 'old', name: '24-001' },
    hives: [
      { id: 'H03', code: 'H03', name: null, how: 'mother' },
      { id: 'H04', code: 'H04', name: null, how: 'sister' },
      { id: 'H05', code: 'H05', name: null, how: 'daughter' },
      { id: 'H10', code: 'H10', name: null, how: 'sister' },
    ],
  });
});

test('a hive whose queen is not known has a line at most', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => {
    colonies.insert(aColony({ id: 'a', code: 'H01', motherLine: 'Anna' }));
    colonies.insert(aColony({ id: 'b', code: 'H02', name: 'Berta', motherLine: 'anna ' }));
    colonies.insert(aColony({ id: 'c', code: 'H03', motherLine: null }));
  });
  const { relatives } = getHive(desk, { colonyId: 'a' }) ?? {};
  expect(relatives).toEqual({
    queen: null,
    mother: null,
    hives: [{ id: 'b', code: 'H02', name: 'Berta', how: 'same-line' }],
  });
});
