import type { z } from 'zod';
import type { RecordFeeding } from '../../../shared/contract/feeding.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { type Feeding, feedMeasure, MOST_FEED_AT_ONCE } from '../../../shared/model/feeding.ts';
import { parseFeedAmount } from '../../../shared/text/feed-amount.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';

type Typed = Pick<z.infer<typeof RecordFeeding>, 'fedOn' | 'feed' | 'ownFeed' | 'amount' | 'note'>;
export type GivenFeed = Omit<Feeding, 'id' | 'colonyId' | 'boxId'>;

/** What was fed, with the amount read in the person's measures. */
export function givenFeed({ workbook: { tables } }: Desk, typed: Typed): Result<GivenFeed, Refusal> {
  const { fedOn, feed, amount: text, note } = typed;
  const ownFeed = feed === 'other' ? typed.ownFeed || null : null;
  if (feed === 'other' && ownFeed === null) return refuse({ kind: 'feed-not-named', field: 'ownFeed' });
  const amount = parseFeedAmount(text, feedMeasure(feed), storedSettings(tables.settings).measures);
  if (amount === null) return refuse({ kind: 'amount-unreadable', field: 'amount', text });
  if ((amount.litres ?? amount.kilograms ?? 0) > MOST_FEED_AT_ONCE)
    return refuse({ kind: 'amount-too-large', field: 'amount', text });
  return ok({ fedOn, feed, ownFeed, ...amount, note: note || null });
}

export function feedingNotices({ today }: Desk, { fedOn }: Pick<Feeding, 'fedOn'>): readonly Notice[] {
  return dayOfIso(fedOn) > today ? [{ kind: 'day-in-future', field: 'fedOn', day: fedOn }] : [];
}
