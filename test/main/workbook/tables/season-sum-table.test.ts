import { expect, test } from 'vitest';
import { openMemoryWorkbook } from '../../../../main/workbook/memory-workbook.ts';
import { readMigrations } from '../../../../main/workbook/migrations.ts';
import type { SeasonSum, Tables } from '../../../../main/workbook/workbook.ts';
import { RATE_STAGES } from '../../../../shared/contract/season.ts';
import { ok, refuse } from '../../../../shared/kernel/result.ts';
import { aBatch, anObservation, aStepDone, aStepMove } from '../../../builders/batch.ts';
import { MIGRATIONS_FOLDER } from '../../../builders/desk.ts';

const aSum = (season: number, changes: Partial<SeasonSum> = {}): SeasonSum => ({
  season,
  practice: false,
  level: 'a',
  other: '',
  batches: 1,
  stages: Object.fromEntries(
    RATE_STAGES.map((stage) => [stage, { successes: 3, of: 4, batches: 1 }]),
  ) as SeasonSum['stages'],
  ...changes,
});

/** Two seasons with a batch each, and their sums kept for one question. */
function aWorkbook() {
  const workbook = openMemoryWorkbook(readMigrations(MIGRATIONS_FOLDER));
  const write = (work: (tables: Tables) => void) =>
    workbook.change({ did: 'other' }, (tables) => {
      work(tables);
      return ok(null);
    });
  write(({ batches, boxes }) => {
    for (const season of [2026, 2025]) batches.insert(aBatch({ id: `b${season}`, code: `b${season}`, season }));
    boxes.insert({
      id: 'box',
      code: 'M1',
      yardId: null,
      row: null,
      walkOrder: 0,
      boxType: 'mini',
      note: null,
      retiredOn: null,
    });
  });
  workbook.tables.seasonSums.keep('method', [aSum(2025), aSum(2026), aSum(2026, { practice: true, level: 'b' })]);
  return { workbook, write, sums: workbook.tables.seasonSums };
}

test('adds seasons up, one season or practice left out as asked; another question is another matter', () => {
  const { sums } = aWorkbook();
  expect(sums.seasons()).toEqual([2025, 2026]);
  expect(sums.missing('method')).toEqual([]);
  expect(sums.missing('builder')).toEqual([2025, 2026]);
  expect(
    sums.sums('method', null, false).map(({ level, batches, stages }) => [level, batches, stages.take.of]),
  ).toEqual([
    ['a', 2, 8],
    ['b', 1, 4],
  ]);
  expect(sums.sums('method', 2026, true).map(({ level, batches }) => [level, batches])).toEqual([['a', 1]]);
  expect(sums.sums('builder', null, false)).toEqual([]);
});

const OF_2026: readonly (readonly [string, (tables: Tables) => void])[] = [
  ['a tally', ({ tallies }) => tallies.put({ ...aTallyOf('b2026') })],
  ['the batch', ({ batches }) => batches.update(aBatch({ id: 'b2026', code: 'b2026', season: 2026, practice: true }))],
  ['a new batch', ({ batches }) => batches.insert(aBatch({ id: 'more', code: 'more', season: 2026 }))],
  ['a step done', ({ stepsDone }) => stepsDone.insert(aStepDone({ batchId: 'b2026' }))],
  ['a step moved', ({ stepMoves }) => stepMoves.insert(aStepMove({ batchId: 'b2026' }))],
  ['something seen', ({ observations }) => observations.insert(anObservation({ batchId: 'b2026' }))],
  [
    'a cell placed',
    ({ placements }) =>
      placements.insert({
        id: 'p',
        boxId: 'box',
        batchId: 'b2026',
        barId: null,
        placedOn: '2026-06-01',
        endedOn: null,
        endReason: null,
      }),
  ],
];

const aTallyOf = (batchId: string) => ({
  batchId,
  ...{ given: 4, taken: 3, enteredSealing: 3, sealed: 3, placed: 0 },
  ...{ emergenceKnown: 0, emerged: 0, matingKnown: 0, proved: 0, laying: 0 },
});

test.each(OF_2026)('%s drops the sums of its season and of no other', (_what, change) => {
  const { write, sums } = aWorkbook();
  expect(write(change).ok).toBe(true);
  expect(sums.missing('method')).toEqual([2026]);
  expect(sums.sums('method', null, false).map(({ level, batches }) => [level, batches])).toEqual([['a', 1]]);
});

test('a batch that moves to another season drops both; a box of another type drops all', () => {
  const moved = aWorkbook();
  moved.write(({ batches }) => batches.update(aBatch({ id: 'b2026', code: 'b2026', season: 2025 })));
  expect(moved.sums.kept('method')).toBe(0);
  expect(moved.sums.seasons()).toEqual([2025]);
  const other = aWorkbook();
  other.write(({ boxes }) => {
    const box = boxes.get('box');
    if (box) boxes.update({ ...box, boxType: 'half-frame' });
  });
  expect(other.sums.kept('method')).toBe(0);
});

test('a change that is refused leaves the sums as they were', () => {
  const { workbook, sums } = aWorkbook();
  workbook.change({ did: 'other' }, ({ tallies }) => {
    tallies.put(aTallyOf('b2026'));
    return refuse({ kind: 'no-workbook-open' });
  });
  expect(sums.missing('method')).toEqual([]);
});

test('a workbook that may only be read can be compared as well', () => {
  const { workbook } = aWorkbook();
  const bytes = workbook.extract('Part', (tables) => tables.batches.insert(aBatch({ season: 2024 })));
  const read = workbook.readExtract(bytes, ({ seasonSums }) => {
    seasonSums.keep('method', [aSum(2024)]);
    return [seasonSums.missing('method'), seasonSums.kept('method')];
  });
  expect(read).toEqual({ ok: true, value: [[], 1] });
  workbook.close();
});
