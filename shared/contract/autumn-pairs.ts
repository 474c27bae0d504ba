import type { IsoDay } from '../kernel/day.ts';
import type { AutumnPair, AutumnQueen, LeftReason, QueenClaim } from '../model/autumn-pair.ts';

/** A mating box that holds something, as it stands before winter. */
export interface AutumnBoxLine {
  readonly id: string;
  readonly code: string;
  readonly yard: string | null;
  /** The strength typed last, 1 to 5, and the day; null = never typed. */
  readonly strength: { readonly value: number; readonly on: IsoDay } | null;
  readonly queen: AutumnQueen;
  readonly queenId: string | null;
  readonly queenNumber: string | null;
  readonly bornIn: number | null;
  readonly claim: QueenClaim | null;
}

export interface AutumnView {
  /** In walking order. */
  readonly boxes: readonly AutumnBoxLine[];
  readonly pairs: readonly AutumnPair[];
  readonly left: readonly { readonly box: string; readonly why: LeftReason<IsoDay> }[];
  /** Laying queens of open wishes for which nobody has been promised yet, and the proved queens in boxes not promised. */
  readonly wanted: number;
  readonly notPromised: number;
}
