import { expect, test } from 'vitest';
import { previewPlainLabels } from '../../../../main/operations/print/preview-plain-labels.ts';
import { printPlainLabels } from '../../../../main/operations/print/print-plain-labels.ts';
import { LABEL_SHEETS } from '../../../../shared/model/label-sheet.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

const wish = {
  kind: 'cages',
  batchId: 'batch-1',
  sheet: 'a4-4x10-48.5x25.4',
  startAt: 38,
  qr: false,
  outline: false,
} as const;

test('goes on at the first free label, runs on to the next sheet, and remembers where that goes on', async () => {
  const desk = aDeskWithBoxes();
  const made = mustOk(await printPlainLabels(desk, wish));
  const { pages } = await readPdf(Buffer.from(made.base64, 'base64'));
  // Eight cages from label 38 of 40: three on the first sheet, five on the second.
  const cages = pages.map(({ texts }) => texts.flatMap(({ text }) => (text.startsWith('cage') ? [text] : [])));
  expect(cages.map(({ length }) => length)).toEqual([3, 5]);
  expect(made.nextStartAt).toBe(6);
  expect(previewPlainLabels(desk, { ...wish, kind: 'bars' }).startAt).toBe(6);
});

test.each(LABEL_SHEETS.map(({ key }) => key))('queens fit on %s, every word inside its label', async (sheet) => {
  const desk = aDesk();
  const seen = { motherLine: 'Maximiliane Oberhuber-Zwettler of the hill', firstEggsOn: '2026-05-26' };
  fill(desk, ({ queens }) => queens.insert(aQueen({ number: '26-041', provedOn: '2026-06-04', ...seen })));
  const { base64 } = mustOk(
    await printPlainLabels(desk, { ...wish, kind: 'queens', batchId: null, sheet, startAt: 1 }),
  );
  const { left, top, labelWidth, labelHeight } = LABEL_SHEETS.find(({ key }) => key === sheet) ?? LABEL_SHEETS[0];
  const texts = (await readPdf(Buffer.from(base64, 'base64'))).pages[0]?.texts ?? [];
  expect(texts.map(({ text }) => text).join(' ')).toContain('26-041');
  for (const { text, x, y, width } of texts) {
    expect(x, text).toBeGreaterThanOrEqual(left + 1.9);
    expect(x + width, text).toBeLessThanOrEqual(left + labelWidth - 1.9);
    expect(y, text).toBeGreaterThan(top + 1.9);
    expect(y, text).toBeLessThan(top + labelHeight - 1.9);
  }
});

test.each([
  ['a batch that is not there', { batchId: 'none' }, { kind: 'nothing-to-label', field: 'kind' }],
  ['a label the sheet does not have', { startAt: 41 }, { kind: 'start-beyond-sheet', field: 'startAt', labels: 40 }],
  ['a sheet that is not there', { sheet: 'own-x' }, { kind: 'label-sheet-missing', field: 'sheet' }],
] as const)('refuses %s', async (_what, changes, refusal) => {
  expect(refusalOf(await printPlainLabels(aDeskWithBoxes(), { ...wish, ...changes }))).toEqual(refusal);
});
