import type { Feeding } from '../../shared/model/feeding.ts';

export const aFeeding = (changes: Partial<Feeding> = {}): Feeding => ({
  id: 'feeding-1',
  colonyId: 'colony-1',
  boxId: null,
  fedOn: '2026-05-14',
  feed: 'syrup-1-1',
  ownFeed: null,
  litres: 1,
  kilograms: null,
  note: null,
  ...changes,
});

/** One row as the evening's sheet sends it. */
export const typedFeeding = {
  id: 'feeding-1',
  place: 'hive',
  placeId: 'colony-1',
  fedOn: '2026-05-14',
  feed: 'syrup-1-1',
  ownFeed: null,
  amount: '1',
  note: null,
} as const;
