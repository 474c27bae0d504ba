import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { FEEDS, type Feeding } from '../model/feeding.ts';
import { IdField, IsoDayField, NoteField } from '../model/fields.ts';
import type { Notice } from './refusal.ts';

const Given = {
  fedOn: IsoDayField,
  feed: z.enum(FEEDS),
  ownFeed: z.string().trim().max(60).nullable(),
  /** As typed: "0.5", "500 g", "1 qt"; empty or "?" where it is not known how much. */
  amount: z.string().trim().max(20),
  note: NoteField.nullable(),
} as const;

export const RecordFeeding = z.object({ id: IdField, place: z.enum(['hive', 'box']), placeId: IdField, ...Given });
/** The same for several places at once, by the codes of hives and mating boxes: "K01-K18, H12". One id each, in order. */
export const FeedSeveral = z.object({
  ids: z.array(IdField).min(1).max(200),
  places: z.string().trim().min(1).max(400),
  ...Given,
});
export const RemoveFeeding = z.object({ feedingId: IdField });
/** The feedings of one hive, or of one mating box. */
export const ListFeedings = z.object({ place: z.enum(['hive', 'box']), id: IdField });

/** The rows of an evening's typing: one feed, one day, the hives or boxes of one yard, or of all when it is null. */
export const FeedingSheet = z.object({
  places: z.enum(['hives', 'boxes']),
  yardId: IdField.nullable(),
  sheetDay: IsoDayField,
  feed: z.enum(FEEDS),
  ownFeed: z.string().trim().max(60).nullable(),
});

export interface FeedingRow {
  /** Of the hive or box. */
  readonly id: string;
  readonly code: string;
  readonly name: string | null;
  /** Yard, and place or row in it. */
  readonly where: readonly string[];
  readonly handsOffUntil: IsoDay | null;
  /** The feeding before the sheet day, of whatever feed. */
  readonly last: Feeding | null;
  /** What was typed for this day and this feed. */
  readonly typed: Feeding | null;
}

export interface FeedingSheetView {
  readonly sheetDay: IsoDay;
  readonly rows: readonly FeedingRow[];
}

export interface FeedingSaved {
  readonly feedings: readonly Feeding[];
  readonly notices: readonly Notice[];
}

export type FeedingRefusal =
  | { readonly kind: 'feeding-missing' }
  | { readonly kind: 'nothing-to-feed'; readonly field: 'placeId' | 'places'; readonly code: string }
  | { readonly kind: 'feed-not-named'; readonly field: 'ownFeed' }
  | { readonly kind: 'amount-unreadable'; readonly field: 'amount'; readonly text: string }
  | { readonly kind: 'amount-too-large'; readonly field: 'amount'; readonly text: string };
