import { expect, test } from 'vitest';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import { removeLabelSheet } from '../../../../main/operations/print/remove-label-sheet.ts';
import { saveLabelSheet } from '../../../../main/operations/print/save-label-sheet.ts';
import { mustOk } from '../../../builders/desk.ts';
import { anOwnSheet } from '../../../builders/own-sheet.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

test('takes one sheet off the list, after which nothing is printed on it', async () => {
  const desk = aDeskWithBoxes();
  mustOk(saveLabelSheet(desk, anOwnSheet()));
  mustOk(saveLabelSheet(desk, anOwnSheet({ key: 'own-other' })));
  const { sheets } = mustOk(removeLabelSheet(desk, { key: 'own-cards' }));
  expect(sheets.map(({ key }) => key)).toEqual(['own-other']);
  const choice = { batchId: 'batch-1', boxIds: null, startAt: 1, qr: false, pencilLine: false, outline: false };
  expect(refusalOf(await printLabels(desk, { ...choice, sheet: 'own-cards' }))).toEqual({
    kind: 'label-sheet-missing',
    field: 'sheet',
  });
});
