import { expect, test } from 'vitest';
import { getBatch } from '../../../../main/operations/batches/get-batch.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { fill } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('reads one batch with its calendar, counts, boxes and stream', () => {
  const batch = getBatch(aDeskWithBoxes(), { batchId: 'batch-1' });
  // Emergence 12 days after larvae of up to 24 hours were given [Chuda-Mickiewicz & Samborski 2015: 16 d 1 h from the egg].
  expect(batch?.timetable.emergence).toEqual({ earliest: '2026-05-15', expected: '2026-05-16', latest: '2026-05-17' });
  expect(batch?.placements.map((row) => row.box)).toEqual(['K01', 'K02', 'K03', 'K04', 'K05', 'K06']);
  expect(batch?.freeBoxes).toEqual(['K07', 'K08', 'K09', 'K10']);
  expect(batch?.labelsPrintedOn).toBeNull();
  expect(batch?.stream.bands.map(({ stage, alive, forecast }) => [stage, alive, forecast])).toEqual([
    ['egg', 12, false],
    ['larva', 9, false],
    ['sealed', 8, false],
    ['ready', 6, false],
    ['virgin', 6, true],
    ['laying', 6, true],
  ]);
});

test('answers null for a batch that is not there', () => {
  expect(getBatch(aDeskWithBoxes(), { batchId: 'gone' })).toBeNull();
});

test('says how many cells to keep in hand, and in which yards the cells of each mother stand', () => {
  const desk = aDeskWithBoxes();
  fill(desk, ({ yards, boxes }) => {
    yards.insert({ id: 'heath', name: 'Heath', note: null });
    for (const box of boxes.all().filter(({ code }) => code >= 'K07')) boxes.update({ ...box, yardId: 'heath' });
  });
  const { breederId, sealed, spread } = { ...getBatch(desk, { batchId: 'batch-1' })?.batch, ...spreadOf(desk) };
  expect(sealed).toBe(8);
  expect(spread.spare).toEqual({ from: 1, to: 2 });
  const mother = desk.workbook.tables.colonies.get(breederId ?? '')?.code ?? null;
  expect(mother).not.toBeNull();
  expect(spread).toMatchObject({
    mother,
    yards: [
      { yard: 'Heath', freeBoxes: 4, mothers: [] },
      { yard: null, freeBoxes: 0, mothers: [{ mother, cells: 6 }] },
    ],
    // Of one yard nobody has said the name, so it cannot be named.
    allIn: null,
  });
  fill(desk, ({ yards, boxes }) => {
    yards.insert({ id: 'orchard', name: 'Orchard', note: null });
    for (const box of boxes.where({ yardId: null })) boxes.update({ ...box, yardId: 'orchard' });
  });
  expect(spreadOf(desk).spread.allIn).toBe('Orchard');
});

function spreadOf(desk: Desk) {
  const batch = getBatch(desk, { batchId: 'batch-1' });
  if (!batch) throw new Error('the batch is not there');
  return { sealed: batch.tally.sealed, spread: batch.spread };
}
