import { expect, test } from 'vitest';
import { removePrinter } from '../../../../main/operations/print/remove-printer.ts';
import { savePrinter } from '../../../../main/operations/print/save-printer.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { readings } from '../../../builders/own-sheet.ts';

test('forgets one printer and keeps the others', () => {
  const desk = aDesk();
  mustOk(savePrinter(desk, { name: 'kitchen', ...readings }));
  mustOk(savePrinter(desk, { name: 'school', ...readings }));
  const { printers } = mustOk(removePrinter(desk, { name: 'kitchen' }));
  expect(printers.map(({ name }) => name)).toEqual(['school']);
});
