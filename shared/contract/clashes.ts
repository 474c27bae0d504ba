import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import type { ClashOf, StartDayOf } from '../model/clash.ts';
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

/** One day on which a batch could start. */
export interface StartDayLine extends StartDayOf<IsoDay> {
  /** When its ripe cells would move; null for a method that moves none. */
  readonly placeOn: IsoDay | null;
  readonly emergesOn: IsoDay;
}

export interface StartDayList {
  /** Every day of the span, in order. */
  readonly days: readonly StartDayLine[];
  /** Codes of the batches that take the builder, by id. */
  readonly names: Readonly<Record<string, string>>;
}
