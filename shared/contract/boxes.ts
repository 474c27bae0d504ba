import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { PROPOSAL_KINDS, type ProposalKind, type ProposalReason } from '../model/box-proposal.ts';
import { IdField, IsoDayField } from '../model/fields.ts';
import { BoxLook, type LookResult } from '../model/look.ts';
import { MatingBox, PLACEMENT_ENDS } from '../model/mating-box.ts';
import { BOX_TYPES, type BoxType } from '../model/method.ts';
import type { Notice } from './refusal.ts';

/** Boxes by their codes: "K01-K18", "K01, K03, K7-K9". Ids are made by the caller, one per box, in order. */
export const AddBoxes = z.object({
  ids: z.array(IdField).min(1).max(200),
  codes: z.string().trim().min(1).max(200),
  yardId: IdField.nullable(),
  row: z.string().trim().max(30).nullable(),
  boxType: z.enum(BOX_TYPES),
});
export const PlaceCells = z.object({
  batchId: IdField,
  /** Box codes or a span of them, as typed. */
  boxes: z.string().trim().min(1).max(400),
  ids: z.array(IdField).min(1).max(200),
  placedOn: IsoDayField,
  barId: IdField.nullable(),
});
export const RecordLook = BoxLook.omit({ placementId: true }).extend({
  /** Shift + result key: the queen gets this number as well. */
  queen: z.object({ id: IdField, number: z.string().trim().min(1).max(12) }).nullable(),
});
export const ListLooks = z.object({ boxId: IdField });
export const RemoveLook = z.object({ lookId: IdField });
export const EndPlacement = z.object({
  placementId: IdField,
  endedOn: IsoDayField,
  reason: z.enum(PLACEMENT_ENDS),
  /** The hive the box was united with; missing = not said, or not united. */
  unitedWith: IdField.optional(),
});
/** The proposal as it was shown; one that no longer stands is refused, so that nothing is ended unseen. */
export const AcceptProposal = z.object({
  boxId: IdField,
  placementId: IdField,
  kind: z.enum(PROPOSAL_KINDS),
  on: IsoDayField,
});
export const SaveBox = MatingBox;
export const RetireBox = z.object({ boxId: IdField, retiredOn: IsoDayField });
/** The rows of an evening's typing: the looks due, by job, or all boxes of a yard when the batch is null. */
export const LookSheet = z.object({
  batchId: IdField.nullable(),
  step: z.enum(['emergence-check', 'first-look', 'sealed-brood-look']).nullable(),
  sheetDay: IsoDayField,
});

export type BoxStateKind = 'free' | 'cell' | 'virgin' | 'laying' | 'proved' | 'failed' | 'retired';

export interface ProposalLine {
  readonly kind: ProposalKind;
  readonly on: IsoDay;
  readonly freeFrom: IsoDay | null;
  readonly cells: { readonly batchId: string; readonly batch: string; readonly on: IsoDay } | null;
  readonly reasons: readonly ProposalReason<IsoDay>[];
}

/** What lies ahead of a box. */
export interface BoxOutlook {
  readonly nextLookOn: IsoDay | null;
  /** The strength typed last, 1 to 5. */
  readonly strength: number | null;
  /** A free box should be given a cell from this day on. */
  readonly freeFrom: IsoDay | null;
  readonly ownCellsOn: IsoDay | null;
  /** The span in which its workers may begin to lay if no brood comes; null where there is brood, or no bees. */
  readonly layingWorkersFrom: IsoDay | null;
  readonly layingWorkersLatest: IsoDay | null;
  readonly proposal: ProposalLine | null;
}

export interface BoxLine extends BoxOutlook {
  readonly id: string;
  readonly code: string;
  readonly yardId: string | null;
  readonly yard: string | null;
  readonly row: string | null;
  readonly walkOrder: number;
  readonly boxType: BoxType;
  readonly note: string | null;
  readonly retiredOn: IsoDay | null;
  readonly state: BoxStateKind;
  readonly placementId: string | null;
  readonly batchId: string | null;
  readonly batch: string | null;
  readonly breederId: string | null;
  readonly breeder: string | null;
  readonly placedOn: IsoDay | null;
  readonly emergenceExpected: IsoDay | null;
  readonly daysSinceEmergence: number | null;
  readonly handsOffUntil: IsoDay | null;
  readonly firstLookOn: IsoDay | null;
  readonly sealedBroodLookOn: IsoDay | null;
  readonly lastResult: LookResult | null;
  readonly lastLookOn: IsoDay | null;
  readonly queenId: string | null;
  readonly queenNumber: string | null;
}

export interface LookRow extends BoxLine {
  /** The look already typed for this sheet day, if any. */
  readonly typed: {
    readonly id: string;
    readonly result: LookResult;
    readonly strength: number | null;
    readonly food: number | null;
    readonly note: string | null;
  } | null;
}

export interface LookSheetView {
  readonly batch: string | null;
  readonly sheetDay: IsoDay;
  readonly rows: readonly LookRow[];
  readonly nextQueenNumber: string;
}

export type BoxesRefusal =
  | { readonly kind: 'box-codes-unreadable'; readonly field: 'codes' | 'boxes' | 'places'; readonly text: string }
  | { readonly kind: 'box-code-taken'; readonly field: 'codes'; readonly code: string }
  | { readonly kind: 'box-not-found'; readonly field: 'boxes' | 'boxId'; readonly code: string }
  | {
      readonly kind: 'box-holds-a-cell';
      readonly field: 'boxes';
      readonly box: string;
      readonly batch: string;
      readonly since: IsoDay;
    }
  | { readonly kind: 'box-holds-a-queen'; readonly field: 'boxes'; readonly box: string; readonly queen: string }
  | { readonly kind: 'box-retired'; readonly field: 'boxes'; readonly box: string }
  | {
      readonly kind: 'more-boxes-than-sealed-cells';
      readonly field: 'boxes';
      readonly boxes: number;
      readonly cells: number;
    }
  | { readonly kind: 'emergence-passed'; readonly field: 'placedOn'; readonly latest: IsoDay }
  | { readonly kind: 'cells-not-ripe'; readonly field: 'placedOn'; readonly earliest: IsoDay }
  | { readonly kind: 'look-before-placing'; readonly field: 'lookedOn' | 'endedOn'; readonly placedOn: IsoDay }
  | { readonly kind: 'look-missing' }
  | { readonly kind: 'placement-not-found' }
  | { readonly kind: 'proposal-outdated'; readonly box: string }
  | { readonly kind: 'wrong-number-of-ids'; readonly needed: number };

export interface BoxesChanged {
  readonly boxes: readonly BoxLine[];
  readonly notices: readonly Notice[];
}

export interface LookSaved {
  readonly row: LookRow;
  readonly notices: readonly Notice[];
}
