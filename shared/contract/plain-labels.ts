import { z } from 'zod';
import { IdField } from '../model/fields.ts';
import { LabelChoice, type LabelFace, type LabelPicture } from './print.ts';

/** What may carry a label besides a mating box. Nothing is kept of their printing but the place on the sheet. */
export const PLAIN_LABEL_KINDS = ['bars', 'cages', 'queens'] as const;
export type PlainLabelKind = (typeof PLAIN_LABEL_KINDS)[number];

export const PreviewPlainLabels = LabelChoice.pick({ sheet: true, qr: true }).extend({
  kind: z.enum(PLAIN_LABEL_KINDS),
  /** Null = the newest batch; not asked for queens. */
  batchId: IdField.nullable(),
});

export const PrintPlainLabels = PreviewPlainLabels.extend(
  LabelChoice.pick({ startAt: true, printer: true, outline: true }).shape,
);

export interface PlainLabelOffer {
  /** Batches that have bars, newest first. */
  readonly batches: readonly { readonly id: string; readonly code: string }[];
  readonly batchId: string | null;
  readonly labels: readonly LabelFace[];
  readonly startAt: number;
  readonly look: LabelLook | null;
}

/** How the first label will look, and what is to be known before printing. */
export interface LabelLook {
  /** Null where the square code has no room. */
  readonly picture: LabelPicture | null;
  /** Millimetres that the square code would need; null where it fits or is not asked for. */
  readonly codeNeeds: number | null;
  /** Labels with letters that neither font has, and which letters those are. */
  readonly unprintable: readonly { readonly label: string; readonly letters: readonly string[] }[];
}
