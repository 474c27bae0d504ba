import type { LabelChoice, PrintedFile } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { labelsOnSheet } from '../../../shared/model/label-sheet.ts';
import { labelPdf } from '../../paper/label-pdf.ts';
import { labelAsText, labelRecords, labelTexts } from '../label-texts.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { rememberFirstFree } from './first-free-label.ts';
import { printerByName, sheetByKey } from './print-setup.ts';

/** Draws the labels of a batch as a PDF, and keeps what was printed and where the sheet goes on. */
export async function printLabels(desk: Desk, choice: LabelChoice): Promise<Result<PrintedFile, Refusal>> {
  const { tables } = desk.workbook;
  const batch = choice.batchId === null ? null : tables.batches.get(choice.batchId);
  const boxIds = choice.boxIds === null ? null : new Set(choice.boxIds);
  const all = batch ? labelTexts(desk, batch) : [];
  const labels = all.filter(
    (label) => boxIds === null || boxIds.has(tables.placements.get(label.placementId)?.boxId ?? ''),
  );
  if (!batch || labels.length === 0) return refuse({ kind: 'no-labels', field: 'batchId' });
  const sheet = sheetByKey(tables, choice.sheet);
  if (!sheet) return refuse({ kind: 'label-sheet-missing', field: 'sheet' });
  const onSheet = labelsOnSheet(sheet);
  if (choice.startAt > onSheet) return refuse({ kind: 'start-beyond-sheet', field: 'startAt', labels: onSheet });
  const printedOn = isoOfDay(desk.today);
  const { pencilLine, qr, outline, startAt } = choice;
  const { labels: labelWords, language } = workbookWords(desk);
  const title = labelWords.title(batch.code);
  const pdf = await labelPdf({
    title,
    language,
    sheet,
    labels,
    startAt,
    pencilLine,
    qr,
    outline,
    printer: printerByName(tables, choice.printer ?? null),
    madeAt: `${printedOn}T12:00:00Z`,
  });
  if (pdf.kind === 'code-does-not-fit')
    return refuse({ kind: 'qr-does-not-fit', field: 'qr', neededMillimetres: pdf.neededMillimetres });
  const records = new Map(labelRecords(tables, batch).map((label) => [label.placementId, labelAsText(label)]));
  const nextStartAt = ((startAt - 1 + labels.length) % onSheet) + 1;
  return desk.workbook.change({ did: 'print-labels', batch: batch.code }, (written) => {
    for (const { placementId } of labels) {
      const id = desk.ids.next();
      written.labelPrints.insert({ id, placementId, printedOn, words: records.get(placementId) ?? '' });
    }
    rememberFirstFree(written, sheet, nextStartAt);
    return ok({
      name: labelWords.fileName(batch.code),
      mediaType: 'application/pdf',
      base64: pdf.bytes.toString('base64'),
      pages: pdf.pages,
      nextStartAt,
    });
  });
}
