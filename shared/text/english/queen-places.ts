import type { QueenPlace } from '../../model/queen.ts';

export const QUEEN_PLACES = {
  'in-box': 'in her box',
  caged: 'in a cage',
  'in-hive': 'in a hive',
  given: 'given away',
  sold: 'sold',
  dead: 'dead',
  lost: 'lost',
  unknown: 'in a place not known',
} as const satisfies Record<QueenPlace, string>;
