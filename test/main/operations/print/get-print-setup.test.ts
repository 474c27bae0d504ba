import { expect, test } from 'vitest';
import { getPrintSetup } from '../../../../main/operations/print/get-print-setup.ts';
import { saveLabelSheet } from '../../../../main/operations/print/save-label-sheet.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { anOwnSheet } from '../../../builders/own-sheet.ts';

test('is empty at first, then holds what was kept', () => {
  const desk = aDesk();
  expect(getPrintSetup(desk)).toEqual({ sheets: [], printers: [] });
  mustOk(saveLabelSheet(desk, anOwnSheet()));
  expect(getPrintSetup(desk).sheets).toEqual([anOwnSheet()]);
});

test('leaves out what another version wrote and cannot be read, and keeps the rest', () => {
  const desk = aDesk();
  fill(desk, ({ settings }) => {
    settings.put('ownLabelSheets', [{ key: 'own-x', columns: -3 }, anOwnSheet()]);
    settings.put('printers', 'none');
  });
  expect(getPrintSetup(desk)).toEqual({ sheets: [anOwnSheet()], printers: [] });
});
