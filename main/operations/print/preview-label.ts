import type { z } from 'zod';
import type { LabelLook } from '../../../shared/contract/plain-labels.ts';
import type { PreviewLabel } from '../../../shared/contract/print.ts';
import { labelLook } from '../../paper/label-pdf.ts';
import { labelTexts } from '../label-texts.ts';
import type { Desk } from '../operation.ts';
import { sheetByKey } from './print-setup.ts';

/** The first label of a batch as it will be printed, with what is to be known before printing; null when there is none. */
export function previewLabel(
  desk: Desk,
  { batchId, sheet: key, qr, pencilLine }: z.infer<typeof PreviewLabel>,
): LabelLook | null {
  const { tables } = desk.workbook;
  const batch = tables.batches.get(batchId);
  const labels = batch ? labelTexts(desk, batch) : [];
  const sheet = sheetByKey(tables, key);
  return sheet ? labelLook(labels, sheet, { qr, pencilLine }) : null;
}
