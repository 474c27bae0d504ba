import { expect, test } from 'vitest';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import { savePrinter } from '../../../../main/operations/print/save-printer.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { readings } from '../../../builders/own-sheet.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

test('keeps shift and stretch, reckoned by hand from the four readings; measuring again replaces them', () => {
  const desk = aDesk({ today: '2026-04-03' });
  mustOk(savePrinter(desk, { name: 'kitchen', ...readings, barAcross: 101 }));
  const { printers } = mustOk(savePrinter(desk, { name: 'kitchen', ...readings }));
  expect(printers).toHaveLength(1);
  // 99.8 of 100 mm: 0.998. The cross at 20 mm would stand at 19.96 by that alone, and stands at 20.36: 0.4 mm right.
  expect(printers[0]).toMatchObject({ name: 'kitchen', measuredOn: '2026-04-03', stretchY: 1 });
  expect(printers[0]?.stretchX).toBeCloseTo(0.998, 6);
  expect(printers[0]?.shiftX).toBeCloseTo(0.4, 6);
  expect(printers[0]?.shiftY).toBeCloseTo(1, 6);
});

test('labels are asked for where that printer will put them right', async () => {
  const desk = aDeskWithBoxes();
  mustOk(savePrinter(desk, { name: 'kitchen', ...readings }));
  const choice = { batchId: 'batch-1', boxIds: null, qr: true, pencilLine: true, outline: false, startAt: 21 };
  const textsOf = async (printer: string | null) => {
    const { base64 } = mustOk(await printLabels(desk, { ...choice, sheet: 'a4-3x7-63.5x38.1', printer }));
    return (await readPdf(Buffer.from(base64, 'base64'))).pages.flatMap(({ texts }) => texts);
  };
  const [plain, corrected] = [await textsOf(null), await textsOf('kitchen')];
  expect(corrected).toHaveLength(plain.length);
  for (const [index, { text, x, y }] of corrected.entries()) {
    // What this printer makes of the place asked for: shift + stretch x place.
    expect(0.4 + 0.998 * x, text).toBeCloseTo(plain[index]?.x ?? 0, 1);
    expect(1 + y, text).toBeCloseTo(plain[index]?.y ?? 0, 1);
  }
});

test.each([
  ['a page printed to fit', { barAcross: 96.5 }, { field: 'barAcross', trouble: 'scaled', millimetres: 96.5 }],
  ['a bar of another length', { barDown: 120 }, { field: 'barDown', trouble: 'scaled', millimetres: 120 }],
  ['a cross far off', { crossFromTop: 45 }, { field: 'crossFromTop', trouble: 'far', millimetres: 45 }],
] as const)('refuses %s and keeps nothing', (_what, changes, trouble) => {
  const desk = aDesk();
  const refused = savePrinter(desk, { name: 'kitchen', ...readings, ...changes });
  expect(refusalOf(refused)).toEqual({ kind: 'printer-reading-wrong', ...trouble });
  expect(desk.workbook.tables.settings.get('printers')).toBeNull();
});
