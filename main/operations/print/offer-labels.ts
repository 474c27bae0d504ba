import type { z } from 'zod';
import type { LabelOffer, OfferLabels, WaitingLabel } from '../../../shared/contract/print.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { labelChanges, labelRecords, labelTexts, lastPrint, openPlacements } from '../label-texts.ts';
import type { Desk } from '../operation.ts';
import { firstFreeLabel } from './first-free-label.ts';
import { sheetByKey } from './print-setup.ts';

/** Batches with cells in boxes, and the labels of the chosen one (or of the newest). */
export function offerLabels(desk: Desk, { batchId, sheet: key }: z.infer<typeof OfferLabels>): LabelOffer {
  const { tables } = desk.workbook;
  const sheet = sheetByKey(tables, key);
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
      unprinted: waitingLabels(tables, batch).length,
    })),
    labels: chosen ? labelTexts(desk, chosen) : [],
    waiting: chosen ? waitingLabels(tables, chosen) : [],
    startAt: sheet ? firstFreeLabel(tables, sheet) : 1,
  };
}

/** Labels never printed, or printed with words that are no longer right. */
function waitingLabels(tables: Tables, batch: Batch): readonly WaitingLabel[] {
  return labelRecords(tables, batch).flatMap((label): readonly WaitingLabel[] => {
    const print = lastPrint(tables, label.placementId);
    const changes = print === null ? [] : labelChanges(label, print.words);
    if (print !== null && changes.length === 0) return [];
    const boxId = tables.placements.get(label.placementId)?.boxId ?? '';
    return [{ boxId, box: label.box, printedOn: print?.printedOn ?? null, changes }];
  });
}
