import { expect, test } from 'vitest';
import { previewLabel } from '../../../../main/operations/print/preview-label.ts';
import { fill } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes } from '../../../builders/running-batch.ts';

const wish = { batchId: 'batch-1', sheet: 'a4-3x7-63.5x38.1', qr: false, pencilLine: false } as const;

test('shows the first label of the batch with every word where it will be printed', () => {
  const picture = previewLabel(aDeskWithBoxes(), wish)?.picture;
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
  expect(
    previewLabel(aDeskWithBoxes(), { ...wish, pencilLine: true, sheet: 'a4-5x13-38.1x21.2' })?.picture?.omitted,
  ).toEqual(['brood', 'mother', 'look', 'pencilLine']);
});

test('holds the modules of the square code, and says how much room it needs where it has none', () => {
  const rows = previewLabel(aDeskWithBoxes(), { ...wish, qr: true })?.picture?.qr?.rows;
  expect(rows?.map((row) => row.length)).toEqual(new Array(21).fill(21));
  // The upper edge of the finder pattern: seven dark, one light (ISO/IEC 18004).
  expect(rows?.[0]).toMatch(/^11111110/);
  // 21 modules and a white border of 4 on each side, of 0.5 mm: 14.5 mm.
  const small = previewLabel(aDeskWithBoxes(), { ...wish, sheet: 'a4-5x13-38.1x21.2', qr: true });
  expect(small).toMatchObject({ picture: null, codeNeeds: 14.5 });
});

test('shows nothing while the cells are still in the builder', () => {
  expect(previewLabel(aDeskWithBatch(), wish)).toBeNull();
});

test('names each label with letters that neither font has, and those letters once', () => {
  const desk = aDeskWithBoxes();
  // Unicode: Georgian an, bani; a Han letter. Ø and Ž are in the first font, Я in the second.
  const odd = 'KაØ';
  fill(desk, ({ boxes, colonies }) => {
    const [box] = boxes.where({ code: 'K06' });
    const [breeder] = colonies.where({ code: 'H03' });
    if (!box || !breeder) throw new Error('no box');
    boxes.update({ ...box, code: odd });
    colonies.update({ ...breeder, name: 'Žofie Я აბ 蜂' });
  });
  const unprintable = previewLabel(desk, wish)?.unprintable ?? [];
  // The mother stands on every label of the batch, the code on one.
  expect(unprintable.map(({ label }) => label)).toEqual(['K01', 'K02', 'K03', 'K04', 'K05', odd]);
  for (const { letters } of unprintable) expect(letters.toSorted()).toEqual(['ა', 'ბ', '蜂'].toSorted());
  expect(previewLabel(aDeskWithBoxes(), wish)?.unprintable).toEqual([]);
});
