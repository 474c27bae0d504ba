import { expect, test } from 'vitest';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import { saveLabelSheet } from '../../../../main/operations/print/save-label-sheet.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { anOwnSheet } from '../../../builders/own-sheet.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

test('keeps a sheet, and changes it under the same key', () => {
  const desk = aDesk();
  mustOk(saveLabelSheet(desk, anOwnSheet()));
  const { sheets } = mustOk(saveLabelSheet(desk, anOwnSheet({ top: 19 })));
  expect(sheets).toEqual([anOwnSheet({ top: 19 })]);
});

test('labels are printed on it where its measures say', async () => {
  const desk = aDeskWithBoxes();
  mustOk(saveLabelSheet(desk, anOwnSheet()));
  const choice = { batchId: 'batch-1', boxIds: null, sheet: 'own-cards', qr: false, pencilLine: false, outline: false };
  const { base64 } = mustOk(await printLabels(desk, { ...choice, startAt: 4 }));
  const [page] = (await readPdf(Buffer.from(base64, 'base64'))).pages;
  const number = page?.texts.find(({ text }) => text === 'K01');
  // By hand: label 4 is the second of the second row, 12 + 96 mm from the left and 20 + 52 mm down; words 2 mm inside.
  expect(number?.x).toBeCloseTo(110, 1);
  expect(number?.y).toBeGreaterThan(74);
  expect(number?.y).toBeLessThan(97);
});

test.each([
  ['labels that overlap', { pitchX: 88.5 }, { field: 'pitchX', trouble: 'overlap', millimetres: 1.5 }],
  ['a row below the paper', { rows: 6 }, { field: 'rows', trouble: 'beyond-paper', millimetres: 33 }],
  ['a column beside the paper', { left: 40 }, { field: 'columns', trouble: 'beyond-paper', millimetres: 16 }],
  ['labels too small for words', { labelHeight: 15 }, { field: 'labelHeight', trouble: 'too-small', millimetres: 4 }],
] as const)('refuses %s, naming the field and by how much', (_what, changes, trouble) => {
  const desk = aDesk();
  expect(refusalOf(saveLabelSheet(desk, anOwnSheet(changes)))).toEqual({ kind: 'label-sheet-wrong', ...trouble });
  expect(desk.workbook.tables.settings.get('ownLabelSheets')).toBeNull();
});
