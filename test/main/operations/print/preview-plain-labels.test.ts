import { expect, test } from 'vitest';
import { previewPlainLabels } from '../../../../main/operations/print/preview-plain-labels.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

const wish = { batchId: null, sheet: 'a4-4x10-48.5x25.4', qr: false } as const;

test('one label a bar, with batch, mother, day of the larvae and days of emergence', () => {
  const { labels, batchId, look } = previewPlainLabels(aDeskWithBoxes(), { ...wish, kind: 'bars' });
  expect(batchId).toBe('batch-1');
  expect(labels).toHaveLength(1);
  expect(labels[0]).toMatchObject({ box: '26-01', batch: 'bar 1', mother: 'mother H03', handsOffUntil: null });
  expect(labels[0]?.sealedBroodLookOn).toBe('given Mon 4 May');
  expect(labels[0]?.firstLookOn).toMatch(/^out from [A-Z][a-z]{2} \d+ May/);
  expect(look?.picture?.strip).toBeNull();
  expect(look?.picture?.texts.map(({ text }) => text)).toContain('bar 1');
});

test('one label a cage: as many as cells were sealed', () => {
  const { labels } = previewPlainLabels(aDeskWithBoxes(), { ...wish, kind: 'cages' });
  expect(labels.map(({ batch }) => batch)).toEqual(Array.from({ length: 8 }, (_, index) => `cage ${index + 1}`));
});

test('queens still here, with number, year colour in a word, line, and what was seen', () => {
  const desk = aDesk();
  fill(desk, ({ queens }) => {
    const seen = { motherLine: 'Żaneta', firstEggsOn: '2026-05-26', provedOn: '2026-06-04' };
    queens.insert(aQueen({ id: 'q2', number: '26-010', ...seen }));
    queens.insert(aQueen({ id: 'q1', number: '26-002', bornIn: 2024 }));
    queens.insert(aQueen({ id: 'q3', number: '26-003', place: 'sold' }));
  });
  const { labels } = previewPlainLabels(desk, { ...wish, kind: 'queens' });
  // Year colours: 2026 white, 2024 green (international marking code).
  expect(labels.map(({ box, batch }) => [box, batch])).toEqual([
    ['26-002', 'green'],
    ['26-010', 'white'],
  ]);
  expect(labels[1]).toMatchObject({
    mother: 'line Żaneta',
    firstLookOn: 'eggs Tue 26 May',
    sealedBroodLookOn: 'proved Thu 4 Jun',
  });
});

test('nothing to label is an empty list, and no picture', () => {
  const offer = previewPlainLabels(aDesk(), { ...wish, kind: 'bars' });
  expect(offer).toEqual({ batches: [], batchId: null, labels: [], startAt: 1, look: null });
});
