import type { Day } from '../kernel/day.ts';
import type { Id } from '../kernel/id.ts';

/** Whether the queen of a box is bespoken. `perhaps`: some of the proved queens are wanted, and nobody said which. */
export type QueenClaim =
  | { readonly kind: 'promised'; readonly to: string }
  | { readonly kind: 'wanted' }
  | { readonly kind: 'perhaps' }
  | { readonly kind: 'spare' };

/** What is known of the queen of a box before winter. `on-the-way`: a cell or queen that may still come to lay. */
export const AUTUMN_QUEENS = [
  'proved',
  'laying',
  'on-the-way',
  'not-sure',
  'none',
  'given-up',
  'drone-layer',
  'bees-gone',
] as const;
export type AutumnQueen = (typeof AUTUMN_QUEENS)[number];

/** Why a box is to be joined to another. */
export type JoinReason =
  | { readonly kind: 'weak'; readonly strength: number }
  | { readonly kind: 'no-queen' }
  | { readonly kind: 'given-up' }
  | { readonly kind: 'drone-layer' };

/** Why the queen of one of the two boxes comes out first and not the other. Years of birth. */
export type OutReason =
  | { readonly kind: 'drone-layer' }
  | { readonly kind: 'given-up' }
  | { readonly kind: 'not-proved' }
  | { readonly kind: 'older'; readonly bornIn: number; readonly otherBornIn: number }
  | { readonly kind: 'same-year'; readonly bornIn: number }
  | { readonly kind: 'year-unknown' };

/** What is done before two boxes are united; a queen that is bespoken is never taken out to be lost. */
export type FirstDo = 'look-through' | 'take-out' | 'give-or-cage';

/** Two boxes proposed to be united before winter. Proposals only: the person decides. */
export interface AutumnPair {
  /** The box that is brought to the other. */
  readonly joined: Id;
  readonly keeper: Id;
  readonly why: readonly JoinReason[];
  /** The box whose queen comes out first, and why hers; null = there is no queen to take out. */
  readonly out: { readonly box: Id; readonly reason: OutReason; readonly claim: QueenClaim | null } | null;
  readonly first: FirstDo;
}

/** Why a box is in no pair. */
export type LeftReason<DayOf = Day> =
  | { readonly kind: 'stays' }
  | { readonly kind: 'strength-unknown' }
  | { readonly kind: 'strength-old'; readonly on: DayOf }
  | { readonly kind: 'not-proved-yet' }
  | { readonly kind: 'on-the-way' }
  | { readonly kind: 'look-again' }
  | { readonly kind: 'workers-may-lay' }
  | { readonly kind: 'cell-at-hand' }
  | { readonly kind: 'bees-gone' }
  | { readonly kind: 'no-neighbour' };

export interface LeftBox {
  readonly box: Id;
  readonly why: LeftReason;
}

export interface AutumnPairs {
  readonly pairs: readonly AutumnPair[];
  readonly left: readonly LeftBox[];
}
