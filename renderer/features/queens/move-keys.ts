import type { QueenPlace } from '../../../shared/model/queen.ts';

/** Where a queen can be sent from her page. */
export type MovePlace = Exclude<QueenPlace, 'in-box' | 'unknown'>;
export const MOVE_PLACES: readonly MovePlace[] = ['given', 'sold', 'in-hive', 'caged', 'dead', 'lost'];

const KEYS: Readonly<Record<string, MovePlace>> = {
  g: 'given',
  s: 'sold',
  h: 'in-hive',
  c: 'caged',
  d: 'dead',
  l: 'lost',
};

/** The place a single key stands for; null with a modifier, or for any other key. */
export function placeOfKey(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>): MovePlace | null {
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  return KEYS[event.key.toLowerCase()] ?? null;
}
