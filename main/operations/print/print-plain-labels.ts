import type { z } from 'zod';
import type { PrintPlainLabels } from '../../../shared/contract/plain-labels.ts';
import type { PrintedFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { labelsOnSheet } from '../../../shared/model/label-sheet.ts';
import { labelPdf } from '../../paper/label-pdf.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { rememberFirstFree } from './first-free-label.ts';
import { labelledBatches, plainFaces } from './plain-label-faces.ts';
import { printerByName, sheetByKey } from './print-setup.ts';

/** Draws labels for bars, cages or queens, and keeps where the sheet goes on. */
export async function printPlainLabels(
  desk: Desk,
  { kind, batchId, sheet: key, startAt, qr, outline, printer }: z.input<typeof PrintPlainLabels>,
): Promise<Result<PrintedFile, Refusal>> {
  const { tables } = desk.workbook;
  const { plainLabels: words, language } = workbookWords(desk);
  const batch = labelledBatches(tables).find(({ id }) => id === batchId) ?? null;
  const labels = plainFaces(desk, kind, batch);
  const sheet = sheetByKey(tables, key);
  if (!sheet) return refuse({ kind: 'label-sheet-missing', field: 'sheet' });
  if (labels.length === 0) return refuse({ kind: 'nothing-to-label', field: 'kind' });
  const onSheet = labelsOnSheet(sheet);
  if (startAt > onSheet) return refuse({ kind: 'start-beyond-sheet', field: 'startAt', labels: onSheet });
  const pdf = await labelPdf({
    title: words.title(words.kinds[kind]),
    language,
    sheet,
    labels,
    startAt,
    pencilLine: false,
    qr,
    outline,
    printer: printerByName(tables, printer ?? null),
    madeAt: `${isoOfDay(desk.today)}T12:00:00Z`,
  });
  if (pdf.kind === 'code-does-not-fit')
    return refuse({ kind: 'qr-does-not-fit', field: 'qr', neededMillimetres: pdf.neededMillimetres });
  const nextStartAt = ((startAt - 1 + labels.length) % onSheet) + 1;
  return desk.workbook.change({ did: 'save-settings' }, (written) => {
    rememberFirstFree(written, sheet, nextStartAt);
    return ok({
      name: words.fileName(words.kinds[kind], kind === 'queens' ? isoOfDay(desk.today) : (batch?.code ?? '')),
      mediaType: 'application/pdf',
      base64: pdf.bytes.toString('base64'),
      pages: pdf.pages,
      nextStartAt,
    });
  });
}
