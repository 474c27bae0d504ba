import { expect, test } from 'vitest';
import { previewLabel } from '../../../../main/operations/print/preview-label.ts';
import { aDeskWithBatch, aDeskWithBoxes } from '../../../builders/running-batch.ts';

const wish = { batchId: 'batch-1', sheet: 'a4-3x7-63.5x38.1', qr: false, pencilLine: false } as const;

test('shows the first label of the batch with every word where it will be printed', () => {
  const picture = previewLabel(aDeskWithBoxes(), wish);
  expect(picture?.texts.map(({ text }) => text)).toEqual([
    'K01',
    '26-01',
    'white',
    'mother H03',
    'HANDS',
    'OFF',
    // Cells of a cut-comb batch given on Mon 4 May 2026; the days are those of the batch's timetable.
    expect.stringMatching(/^to [A-Z][a-z]{2} \d+ May$/),
    expect.stringMatching(/^look [A-Z][a-z]{2} \d+ (May|Jun)$/),
    expect.stringMatching(/^brood [A-Z][a-z]{2} \d+ (May|Jun)$/),
  ]);
  expect(picture?.omitted).toEqual([]);
});

test('says what a small label goes without', () => {
  expect(previewLabel(aDeskWithBoxes(), { ...wish, pencilLine: true, sheet: 'a4-5x13-38.1x21.2' })?.omitted).toEqual([
    'brood',
    'mother',
    'look',
    'pencilLine',
  ]);
});

test('holds the modules of the square code, and nothing where the code has no room', () => {
  const rows = previewLabel(aDeskWithBoxes(), { ...wish, qr: true })?.qr?.rows;
  expect(rows?.map((row) => row.length)).toEqual(new Array(21).fill(21));
  // The upper edge of the finder pattern: seven dark, one light (ISO/IEC 18004).
  expect(rows?.[0]).toMatch(/^11111110/);
  expect(previewLabel(aDeskWithBoxes(), { ...wish, sheet: 'a4-5x13-38.1x21.2', qr: true })).toBeNull();
});

test('shows nothing while the cells are still in the builder', () => {
  expect(previewLabel(aDeskWithBatch(), wish)).toBeNull();
});
