import type { z } from 'zod';
import type { PaperFile, PrintCalibration } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { calibrationPdf } from '../../paper/calibration-pdf.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { printerByName, sheetByKey } from './print-setup.ts';

/** The page on which a printer is measured; with a measured printer, the same page corrected, to see whether it is right. */
export async function printCalibration(
  desk: Desk,
  { sheet: key, printer: name, large = false }: z.input<typeof PrintCalibration>,
): Promise<Result<PaperFile, Refusal>> {
  const { tables } = desk.workbook;
  const { calibration: words, language } = workbookWords(desk);
  const sheet = sheetByKey(tables, key);
  if (!sheet) return refuse({ kind: 'label-sheet-missing', field: 'sheet' });
  const bytes = await calibrationPdf({
    words,
    language,
    sheet,
    printer: printerByName(tables, name),
    large,
    madeAt: `${isoOfDay(desk.today)}T12:00:00Z`,
  });
  return ok({ name: words.fileName, mediaType: 'application/pdf', base64: bytes.toString('base64'), pages: 1 });
}
