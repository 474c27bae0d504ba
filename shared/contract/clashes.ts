import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import type { ClashOf } from '../model/clash.ts';
import { IdField } from '../model/fields.ts';

/** Clashes of one batch, or of all. */
export const ListClashes = z.object({ batchId: IdField.nullable() });

export interface ClashList {
  readonly clashes: readonly (ClashOf<IsoDay> & {
    /** The batches it concerns. */
    readonly batchIds: readonly string[];
  })[];
  /** What the batches, hives and boxes in the clashes are called, by id. */
  readonly names: Readonly<Record<string, string>>;
}
