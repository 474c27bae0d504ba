import { feedSeveral } from '../operations/feeding/feed-several.ts';
import type { Desk } from '../operations/operation.ts';
import { need } from './story-needs.ts';

const syrup = { feed: 'syrup-1-1', ownFeed: null, note: null } as const;
const patty = { feed: 'protein-patty', ownFeed: null, note: null } as const;
const fondant = { feed: 'fondant', ownFeed: null, note: null } as const;

/** Builders around the day of the larvae, and mating boxes as they are filled. */
const FED = [
  { ...syrup, fedOn: '2026-05-02', places: 'H04, H09', amount: '1' },
  { ...patty, fedOn: '2026-05-02', places: 'H04', amount: '200 g' },
  { ...syrup, fedOn: '2026-05-05', places: 'H04', amount: '1' },
  { ...fondant, fedOn: '2026-05-14', places: 'K01-K08', amount: '300 g' },
  { ...syrup, fedOn: '2026-05-17', places: 'H02, H12', amount: '0.5', note: 'Cold and no flow.' },
  { ...syrup, fedOn: '2026-05-19', places: 'H02', amount: '1', note: null },
  { ...fondant, fedOn: '2026-05-20', places: 'K03, K05', amount: '?', note: 'Topped up.' },
] as const;

const MOST_PLACES = 12;

/** Tells what was fed this spring. */
export function tellFeeding(desk: Desk): void {
  for (const fed of FED)
    need(feedSeveral(desk, { ids: Array.from({ length: MOST_PLACES }, () => desk.ids.next()), ...fed }));
}
