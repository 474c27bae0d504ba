import { expect, test } from 'vitest';
import { editBatch } from '../../../../main/operations/batches/edit-batch.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { compareSeason } from '../../../../main/operations/season/compare-season.ts';
import { countingReads } from '../../../builders/counting-reads.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aStart } from '../../../builders/running-batch.ts';

const by = (factor: Parameters<typeof compareSeason>[1]['factor'], changes: object = {}) => ({
  factor,
  and: null,
  season: null,
  leaveOutPractice: false,
  ...changes,
});

test('figures carry their counts and batches; a running batch is no loss', () => {
  const desk = aDeskWithBoxes();
  const { rows, runningLeftOut } = compareSeason(desk, by('method'));
  expect(rows).toHaveLength(1);
  const { take, sealing, emergence, through } = rows[0]?.rates ?? {};
  expect(take).toMatchObject({ successes: 9, of: 12, batches: 1, rate: 0.75 });
  expect(sealing).toMatchObject({ successes: 8, of: 9 });
  expect(emergence).toMatchObject({ of: 0, rate: null, interval: null, batches: 0 });
  expect(through?.rate).toBeNull();
  expect(runningLeftOut).toBe(1);
});

test.each([
  ['builder', 'H12'],
  ['breeder', 'H03'],
  ['season', '2026'],
  ['month', '5'],
  ['boxType', 'mini'],
] as const)('groups by %s', (factor, label) => {
  expect(compareSeason(aDeskWithBoxes(), by(factor)).rows.map((row) => row.label)).toEqual([label]);
});

test('leaves out practice and other seasons when asked', () => {
  const desk = aDeskWithBoxes();
  mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, anchorOn: '2025-05-04' })));
  expect(compareSeason(desk, by('season')).rows.map((row) => row.label)).toEqual(['2025', '2026']);
  expect(compareSeason(desk, by('season', { season: 2025 })).rows.map((row) => row.label)).toEqual(['2025']);
  mustOk(editBatch(desk, { batchId: 'batch-1', note: null, practice: true, lesson: null }));
  expect(compareSeason(desk, by('season', { leaveOutPractice: true })).rows.map((row) => row.label)).toEqual(['2025']);
  expect(compareSeason(aDesk(), by('method'))).toMatchObject({ rows: [], seasons: [], runningLeftOut: 0 });
});

test('a batch of which no sums are kept is counted as one that says nothing yet', () => {
  const desk = aDeskWithBoxes();
  fill(desk, ({ tallies }) => tallies.remove('batch-1'));
  const { rows, runningLeftOut } = compareSeason(desk, by('method'));
  expect(rows[0]).toMatchObject({ batches: 1, rates: { take: { of: 0, rate: null }, through: { rate: null } } });
  expect(runningLeftOut).toBe(1);
});

test('a second look reads no batch and no tally; after a save only the season that was touched is added up anew', () => {
  const desk = aDeskWithBoxes();
  mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, anchorOn: '2025-05-04' })));
  const first = compareSeason(desk, by('builder'));
  const { reading, rowsRead } = countingReads(desk);
  expect(compareSeason(reading, by('builder'))).toEqual(first);
  expect(rowsRead()).toEqual({ colonies: 1, seasonSums: 2 });
  mustOk(editBatch(desk, { batchId: 'batch-2', note: null, practice: true, lesson: null }));
  expect(compareSeason(reading, by('builder', { leaveOutPractice: true })).rows.map(({ batches }) => batches)).toEqual([
    1,
  ]);
  expect(rowsRead()).toMatchObject({ tallies: 1 });
});
