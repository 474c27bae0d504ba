import type { z } from 'zod';
import type { PlainLabelOffer, PreviewPlainLabels } from '../../../shared/contract/plain-labels.ts';
import { labelLook } from '../../paper/label-pdf.ts';
import type { Desk } from '../operation.ts';
import { firstFreeLabel } from './first-free-label.ts';
import { labelledBatches, plainFaces } from './plain-label-faces.ts';
import { sheetByKey } from './print-setup.ts';

/** Labels for bars, cages or queens as they would be printed. */
export function previewPlainLabels(
  desk: Desk,
  { kind, batchId, sheet: key, qr }: z.infer<typeof PreviewPlainLabels>,
): PlainLabelOffer {
  const { tables } = desk.workbook;
  const sheet = sheetByKey(tables, key);
  const batches = labelledBatches(tables);
  const batch = batches.find(({ id }) => id === batchId) ?? batches[0] ?? null;
  const labels = plainFaces(desk, kind, batch);
  return {
    batches: batches.map(({ id, code }) => ({ id, code })),
    batchId: batch?.id ?? null,
    labels,
    startAt: sheet ? firstFreeLabel(tables, sheet) : 1,
    look: sheet ? labelLook(labels, sheet, { qr, pencilLine: false }) : null,
  };
}
