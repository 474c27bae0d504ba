import type { z } from 'zod';
import type { LabelPicture, PreviewLabel } from '../../../shared/contract/print.ts';
import { labelPicture } from '../../paper/label-pdf.ts';
import { labelTexts } from '../label-texts.ts';
import type { Desk } from '../operation.ts';
import { sheetByKey } from './print-setup.ts';

/** The first label of a batch as it will be printed, or null when there is none or its square code has no room. */
export function previewLabel(
  desk: Desk,
  { batchId, sheet: key, qr, pencilLine }: z.infer<typeof PreviewLabel>,
): LabelPicture | null {
  const { tables } = desk.workbook;
  const batch = tables.batches.get(batchId);
  const label = batch ? labelTexts(desk, batch)[0] : undefined;
  const sheet = sheetByKey(tables, key);
  return label && sheet ? labelPicture(label, sheet, { qr, pencilLine }) : null;
}
