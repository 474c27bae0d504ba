import type { z } from 'zod';
import type { LabelOffer, OfferLabels } from '../../../shared/contract/print.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { firstFreeLabel } from './first-free-label.ts';
import { labelRecords, labelTexts, openPlacements } from './label-texts.ts';

/** Batches with cells in boxes, and the labels of the chosen one (or of the newest). */
export function offerLabels(
  { workbook: { tables } }: Desk,
  { batchId, sheet }: z.infer<typeof OfferLabels>,
): LabelOffer {
  const withBoxes = tables.batches
    .all()
    .filter((batch) => openPlacements(tables, batch).length > 0)
    .toReversed();
  const chosen = withBoxes.find((batch) => batch.id === batchId) ?? (batchId === null ? withBoxes[0] : undefined);
  return {
    batches: withBoxes.map((batch) => ({
      id: batch.id,
      code: batch.code,
      boxes: openPlacements(tables, batch).length,
      unprinted: unprinted(tables, batch),
    })),
    labels: chosen ? labelTexts(tables, chosen) : [],
    startAt: firstFreeLabel(tables, sheet),
  };
}

/** Labels never printed, or printed with words that are no longer right. */
function unprinted(tables: Tables, batch: Batch): number {
  return [...labelRecords(tables, batch)].filter(
    ([placementId, words]) => tables.labelPrints.where({ placementId }).at(-1)?.words !== words,
  ).length;
}
