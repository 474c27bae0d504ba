import { z } from 'zod';
import { IdField, IsoDayField } from './fields.ts';

/** Setting of a workbook that was made for someone else's looks: whose it is, and the looks it had when it went out. */
export const ERRAND_KEY = 'errand';
export const Errand = z.object({
  from: z.string().max(200),
  madeOn: IsoDayField,
  looks: z.record(IdField, z.string().max(4000)),
});
export type Errand = z.infer<typeof Errand>;
