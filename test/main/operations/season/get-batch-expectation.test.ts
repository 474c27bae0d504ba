import { expect, test } from 'vitest';
import { addBar } from '../../../../main/operations/batches/add-bar.ts';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { getBatchExpectation } from '../../../../main/operations/season/get-batch-expectation.ts';
import { aDeskWithCounted, type Told, through } from '../../../builders/counted-batches.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, barOf } from '../../../builders/running-batch.ts';

const past: readonly Told[] = [
  { tally: through(30, 22, 20, 18, 13) },
  { tally: through(30, 24, 22, 19, 15) },
  { tally: through(30, 21, 19, 17, 12) },
  { tally: through(30, 23, 21, 18, 14) },
];
const of = (tally: Told['tally']) => getBatchExpectation(aDeskWithCounted([...past, { tally }]), { batchId: 'b2005' });

test('tells a batch as expected from one that fell short, by the other batches of its method', async () => {
  const usual = await of({ given: 30, taken: 22 });
  expect(usual?.stages).toMatchObject([{ stage: 'take', of: 30, came: 22, standing: 'as-expected', batches: 4 }]);
  expect((await of({ given: 30, taken: 5 }))?.stages[0]?.standing).toBe('fewer');
  expect((await of({ given: 30, taken: 30 }))?.stages[0]?.standing).toBe('more');
});

test('reckons what is still to come from the last count', async () => {
  const given = await of({ given: 30 });
  expect(given?.stages).toEqual([]);
  expect(given?.toCome).toMatchObject({ from: 'given', of: 30 });
  const sealed = await of({ given: 30, taken: 22, enteredSealing: 22, sealed: 20 });
  expect(sealed?.toCome).toMatchObject({ from: 'sealed', of: 20 });
  const placed = await of({ given: 30, taken: 22, enteredSealing: 22, sealed: 20, placed: 15 });
  expect(placed?.toCome).toMatchObject({ from: 'placed', of: 15 });
  const means = [given, sealed, placed].map((one) => one?.toCome?.proved.mean ?? 0);
  // 30 larvae at about .75, .92, .88, .75 come to about 13.5; 20 sealed to 13; 15 placed to 10.
  expect(means[0]).toBeGreaterThan(11);
  expect(means[0]).toBeLessThan(16);
  expect(means[2]).toBeLessThan(means[1] ?? 0);
});

test('counts in the queens that are proved already, and those waiting to mate', async () => {
  const half = await of({
    ...through(30, 22, 20, 0, 0),
    placed: 10,
    emergenceKnown: 10,
    emerged: 10,
    matingKnown: 6,
    proved: 6,
  });
  const { lower = 0, upper = 0 } = half?.toCome?.proved ?? {};
  expect([lower >= 6, upper <= 10]).toEqual([true, true]);
  expect((await of(through(30, 22, 20, 18, 13)))?.toCome).toBeNull();
});

test('two bars that differ by more than luck are named, others are not', async () => {
  const desk = aDeskWithBatch();
  const batchId = 'batch-1';
  mustOk(addBar(desk, { batchId, barId: 'bar-2' }));
  const count = (barId: string, taken: number) =>
    mustOk(recordBarCounts(desk, { ...aRow(desk), barId, given: 15, taken }));
  count(barOf(desk), 14);
  count('bar-2', 11);
  expect((await getBatchExpectation(desk, { batchId }))?.bars).toBeNull();
  count('bar-2', 3);
  expect((await getBatchExpectation(desk, { batchId }))?.bars).toEqual({
    stage: 'take',
    better: { number: 1, came: 14, of: 15 },
    worse: { number: 2, came: 3, of: 15 },
  });
});

test('a closed batch has nothing to come, an unknown one no answer, a method never tried a wide one', async () => {
  const desk = aDeskWithCounted([
    ...past,
    { tally: { given: 30 } },
    { method: 'cell-punch', tally: { given: 30, taken: 20 } },
  ]);
  mustOk(closeBatch(desk, { batchId: 'b2005', closedOn: '2005-06-20', lesson: null }));
  expect((await getBatchExpectation(desk, { batchId: 'b2005' }))?.toCome).toBeNull();
  expect(await getBatchExpectation(desk, { batchId: 'none' })).toBeNull();
  const untried = await getBatchExpectation(desk, { batchId: 'b2006' });
  expect(untried?.stages[0]).toMatchObject({ batches: 0, standing: 'as-expected' });
});
