import { z } from 'zod';
import { IdField, IsoDayField } from './fields.ts';

/** That a label was printed and what it said, so that it can be told later which labels are out of date. */
export const LabelPrint = z.object({
  id: IdField,
  placementId: IdField,
  printedOn: IsoDayField,
  /** The words on the label, joined by line breaks. */
  words: z.string().max(1000),
});
export type LabelPrint = z.infer<typeof LabelPrint>;
