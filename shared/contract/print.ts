import { z } from 'zod';
import { IdField } from '../model/fields.ts';
import type { LabelSheetKey } from '../model/label-sheet.ts';

/** Label sheets by their measures; the millimetres are in shared/model/label-sheet.ts. */
export const SHEETS = ['a4-3x7-63.5x38.1', 'roll-62'] as const satisfies readonly LabelSheetKey[];
export type SheetKey = (typeof SHEETS)[number];

export const OfferLabels = z.object({ batchId: IdField.nullable(), sheet: z.enum(SHEETS) });

export const LabelChoice = z.object({
  batchId: IdField.nullable(),
  boxIds: z.array(IdField).max(400).nullable(),
  sheet: z.enum(SHEETS),
  /** First free label, from 1. */
  startAt: z.int().min(1).max(100),
  qr: z.boolean(),
  pencilLine: z.boolean(),
  outline: z.boolean(),
});
export type LabelChoice = z.infer<typeof LabelChoice>;

export interface LabelText {
  readonly placementId: string;
  readonly box: string;
  readonly batch: string;
  readonly mother: string;
  readonly yearColour: string;
  readonly handsOffUntil: string;
  readonly firstLookOn: string;
  readonly sealedBroodLookOn: string;
}

export interface LabelOffer {
  /** Batches with cells in boxes, newest first, and how many of their labels are not printed yet. */
  readonly batches: readonly {
    readonly id: string;
    readonly code: string;
    readonly boxes: number;
    readonly unprinted: number;
  }[];
  readonly labels: readonly LabelText[];
  readonly startAt: number;
}

export interface PrintedFile {
  readonly name: string;
  readonly mediaType: 'application/pdf';
  readonly base64: string;
  readonly pages: number;
  readonly nextStartAt: number;
}

export type PrintRefusal =
  | { readonly kind: 'no-labels'; readonly field: 'batchId' }
  | { readonly kind: 'start-beyond-sheet'; readonly field: 'startAt'; readonly labels: number }
  | { readonly kind: 'qr-does-not-fit'; readonly field: 'qr'; readonly neededMillimetres: number };
