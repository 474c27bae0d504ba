import type { Day } from '../kernel/day.ts';
import type { Id } from '../kernel/id.ts';

/** What can be done with a mating box next. Proposals only: the person decides. */
export const PROPOSAL_KINDS = ['re-use', 'give-cell', 'unite', 'shake-out', 'look-again'] as const;
export type ProposalKind = (typeof PROPOSAL_KINDS)[number];

/** One reason for a proposal, as a fact with its figures; its sentence is in shared/text. */
export type ProposalReason<DayOf = Day> =
  | { readonly kind: 'proved'; readonly on: DayOf; readonly age: number }
  | { readonly kind: 'bees-gone'; readonly on: DayOf }
  | { readonly kind: 'drone-layer'; readonly on: DayOf }
  | { readonly kind: 'no-queen'; readonly looks: number; readonly on: DayOf }
  | { readonly kind: 'may-be-missed'; readonly on: DayOf }
  | { readonly kind: 'cell-failed'; readonly on: DayOf }
  | { readonly kind: 'cell-closed'; readonly on: DayOf; readonly age: number }
  | { readonly kind: 'no-eggs-yet'; readonly on: DayOf; readonly age: number }
  | { readonly kind: 'late'; readonly age: number }
  | { readonly kind: 'given-up'; readonly age: number }
  | { readonly kind: 'never-looked'; readonly age: number }
  | { readonly kind: 'laying-workers'; readonly broodlessDays: number }
  | { readonly kind: 'weak'; readonly strength: number }
  | { readonly kind: 'cells-coming'; readonly batch: string; readonly on: DayOf }
  | { readonly kind: 'no-cells-coming' };

/** Ripe cells of a batch that still want a box. */
export interface CellsComing {
  readonly batchId: Id;
  readonly batch: string;
  readonly on: Day;
}

export interface BoxProposal {
  readonly kind: ProposalKind;
  /** The day to do it; the box may take a cell from `freeFrom` on. */
  readonly on: Day;
  readonly freeFrom: Day | null;
  readonly cells: CellsComing | null;
  readonly reasons: readonly ProposalReason[];
}
