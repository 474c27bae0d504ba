import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { IdField } from '../model/fields.ts';
import { Queen } from '../model/queen.ts';
import { type PromiseStanding, QueenPromise } from '../model/queen-promise.ts';
import { QueenFeedback, QueenMove } from '../model/queen-story.ts';
import type { FollowUpLine } from './follow-ups.ts';
import type { Notice } from './refusal.ts';

export const SaveQueen = Queen;
export const QueenId = z.object({ queenId: IdField });
export const MoveQueen = QueenMove;
export const RecordFeedback = QueenFeedback;
export const PromiseQueen = QueenPromise;
export const TakeBackPromise = z.object({ promiseId: IdField });

export interface PromiseLine extends QueenPromise {
  readonly standing: PromiseStanding;
  /** The day by which she is wanted: her own, else that of the open wish of that name; null = none was said. */
  readonly byWhen: IsoDay | null;
}

/** A queen with a number, or a hive whose queen has none. */
export interface MotherRef {
  readonly kind: 'queen' | 'hive';
  readonly id: string;
  readonly name: string;
  readonly line: string | null;
}

export interface QueenLine {
  readonly queen: Queen;
  readonly yearColour: 'white' | 'yellow' | 'red' | 'green' | 'blue';
  readonly batch: string | null;
  readonly breeder: string | null;
  readonly box: string | null;
  readonly hive: string | null;
  readonly bornOn: IsoDay | null;
  readonly mother: MotherRef | null;
  /** To whom she is promised now. */
  readonly promise: PromiseLine | null;
}

export interface QueenMoveLine extends QueenMove {
  readonly hive: string | null;
}

export interface QueenDetail extends QueenLine {
  /** Newest first. */
  readonly moves: readonly QueenMoveLine[];
  readonly feedback: readonly QueenFeedback[];
  /** Newest first, also those kept or not. */
  readonly promises: readonly PromiseLine[];
  /** Names of open wishes, first wanted first. */
  readonly wishers: readonly string[];
  /** Open ones first, then those done. */
  readonly followUps: readonly FollowUpLine[];
  /** Mother, grandmother and so on, as far as they are known. */
  readonly mothers: readonly MotherRef[];
  readonly daughters: readonly MotherRef[];
  /** Batches whose larvae were hers. */
  readonly batches: readonly { readonly id: string; readonly code: string }[];
  /** Earlier receivers, for completing a name. */
  readonly receivers: readonly string[];
}

export interface MotherLineNode {
  readonly ref: MotherRef;
  /** The queen herself; null for a hive whose queen has no number. */
  readonly queen: QueenLine | null;
  readonly daughters: readonly MotherLineNode[];
}

export interface QueenMoved {
  readonly line: QueenLine;
  readonly notices: readonly Notice[];
}

export type QueensRefusal =
  | { readonly kind: 'queen-number-taken'; readonly field: 'number' | 'queen'; readonly number: string }
  | {
      readonly kind: 'queen-dates-turned-round';
      readonly field: 'provedOn';
      readonly firstEggsOn: IsoDay;
      readonly provedOn: IsoDay;
    }
  | { readonly kind: 'queen-missing' }
  | { readonly kind: 'queen-promised'; readonly field: 'promisedTo'; readonly queen: string; readonly to: string }
  | { readonly kind: 'queen-not-here'; readonly queen: string }
  | { readonly kind: 'promise-days-turned-round'; readonly field: 'wantedOn'; readonly promisedOn: IsoDay }
  | { readonly kind: 'promise-missing' }
  | { readonly kind: 'queen-own-ancestor'; readonly field: 'motherId'; readonly number: string }
  | { readonly kind: 'hive-for-queen-needed'; readonly field: 'colonyId' }
  | { readonly kind: 'queen-moved-before-birth'; readonly field: 'movedOn'; readonly bornOn: IsoDay };
