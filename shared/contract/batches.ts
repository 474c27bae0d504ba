import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import { Batch, type CountedStage, StepDrop } from '../model/batch.ts';
import { CellsField, IdField, IsoDayField, NoteField } from '../model/fields.ts';
import { Loss, type LossStage, MOST_LOST, type StageLoss } from '../model/loss.ts';
import type { BuilderType, Method } from '../model/method.ts';
import { Observation } from '../model/observation.ts';
import { STEPS, type Step } from '../model/step.ts';
import type { BatchTally } from '../model/tally.ts';
import type { Notice } from './refusal.ts';
import type { TimetableView } from './timetable.ts';
import type { FlightView } from './weather.ts';

/** The six fields of the start form plus what they default to. The code may be null: the next free one is taken. */
export const BatchStart = Batch.omit({ closedOn: true, lesson: true, season: true, code: true }).extend({
  code: Batch.shape.code.nullable(),
  /** Made together with the batch when the person names a hive that is not in the workbook yet. */
  newBreeder: z.object({ id: IdField, code: z.string().trim().min(1).max(12) }).nullable(),
  newBuilder: z.object({ id: IdField, code: z.string().trim().min(1).max(12) }).nullable(),
  /** How many bars to lay out. What was planned counts as given only once the person says so. */
  bars: z.int().min(1).max(20),
});
export type BatchStart = z.infer<typeof BatchStart>;

export const BatchPreview = BatchStart.pick({
  method: true,
  methodCopyId: true,
  comb: true,
  builderType: true,
  breederId: true,
  builderId: true,
  anchorStep: true,
  anchorOn: true,
  larvaAgeFromHours: true,
  larvaAgeToHours: true,
  sealedCelsius: true,
  cellsPlanned: true,
});
export const BatchId = z.object({ batchId: IdField });

/** One typed row of the grid: null clears a count ("not counted"), 0 is a count. */
export const GiveAsPlanned = z.object({ batchId: IdField });

export const BarCounts = z.object({
  batchId: IdField,
  barId: IdField,
  countedOn: IsoDayField,
  given: CellsField.nullable(),
  taken: CellsField.nullable(),
  removed: CellsField.nullable(),
  sealed: CellsField.nullable(),
});
export const AddBar = z.object({ batchId: IdField, barId: IdField });
export const MarkStep = z.object({
  id: IdField,
  batchId: IdField,
  step: z.enum(STEPS),
  doneOn: IsoDayField,
  note: NoteField.nullable(),
});
export const UnmarkStep = z.object({ batchId: IdField, step: z.enum(STEPS) });
export const MoveStep = z.object({
  id: IdField,
  batchId: IdField,
  step: z.enum(STEPS),
  movedTo: IsoDayField,
  reason: z.string().trim().max(200),
});
/** Without a reason: an empty text. */
export const DropStep = StepDrop;
export const TakeUpStep = z.object({ batchId: IdField, step: z.enum(STEPS) });
/** 0 takes the reason back. */
export const RecordLoss = Loss.extend({ cells: z.int().min(0).max(MOST_LOST) });
export const SetWarmth = z.object({ batchId: IdField, sealedCelsius: Batch.shape.sealedCelsius });
export const RecordObservation = Observation;
export const RemoveObservation = z.object({ batchId: IdField, observationId: IdField });
export const CloseBatch = z.object({ batchId: IdField, closedOn: IsoDayField, lesson: NoteField.nullable() });
export const EditBatch = z.object({
  batchId: IdField,
  note: NoteField.nullable(),
  practice: z.boolean(),
  lesson: NoteField.nullable(),
});

export interface HiveRef {
  readonly id: string;
  readonly code: string;
  readonly name: string | null;
}

export interface BatchLine {
  readonly id: string;
  readonly code: string;
  readonly season: number;
  readonly method: Method;
  readonly methodName: string | null;
  readonly builderType: BuilderType;
  readonly breeder: HiveRef | null;
  readonly builder: HiveRef | null;
  readonly larvaeGivenOn: IsoDay;
  readonly emergence: TimetableView['emergence'];
  readonly state: 'planned' | 'running' | 'closed';
  /** The step that a planned batch is reckoned from, and its day: another day moves the whole of it. null once begun. */
  readonly begins: { readonly step: Step; readonly on: IsoDay } | null;
  readonly practice: boolean;
  /** null also where its calendar has run out and nobody closed it. */
  readonly closedOn: IsoDay | null;
  readonly lesson: string | null;
  readonly tally: BatchTally;
  /** The next open job, for the list; null when none is left. */
  readonly next: { readonly step: string; readonly on: IsoDay; readonly late: boolean } | null;
  /** Days from day 0 to the end of the calendar in six spans, for the small picture of the stream. */
  readonly stream: StreamPicture;
}

export interface BarRow {
  readonly barId: string;
  readonly number: number;
  readonly counts: Readonly<Record<CountedStage, number | null>>;
  readonly countedOn: IsoDay | null;
}

export interface PlacementRow {
  readonly placementId: string;
  readonly boxId: string;
  readonly box: string;
  readonly placedOn: IsoDay;
  readonly endedOn: IsoDay | null;
  readonly lastResult: string | null;
  readonly lastLookOn: IsoDay | null;
}

export const STREAM_STAGES = ['egg', 'larva', 'sealed', 'ready', 'virgin', 'laying'] as const;
export type StreamStage = (typeof STREAM_STAGES)[number];

/** Everything the batch picture needs, in days and counts; how it is drawn is the page's business. */
export interface StreamPicture {
  readonly from: IsoDay;
  readonly to: IsoDay;
  readonly today: IsoDay;
  readonly bands: readonly {
    readonly stage: StreamStage;
    readonly from: IsoDay;
    readonly to: IsoDay;
    /** Number alive over this span; null while nothing was counted. */
    readonly alive: number | null;
    /** True where no count has confirmed the figure yet. */
    readonly forecast: boolean;
  }[];
  readonly emergence: TimetableView['emergence'];
  readonly gates: readonly { readonly from: IsoDay; readonly to: IsoDay; readonly step: string }[];
  readonly flags: readonly { readonly step: string; readonly on: IsoDay; readonly done: boolean }[];
  /** `cells` were lost before the stage; `setAside` were removed on purpose or not put in boxes, which is no loss. */
  readonly losses: readonly {
    readonly on: IsoDay;
    readonly cells: number;
    readonly setAside: number;
    readonly stage: StreamStage;
  }[];
  readonly threads: readonly { readonly box: string; readonly from: IsoDay; readonly result: string | null }[];
}

export interface BatchDetail extends BatchLine {
  readonly batch: Batch;
  readonly timetable: TimetableView;
  readonly bars: readonly BarRow[];
  readonly placements: readonly PlacementRow[];
  readonly observations: readonly Observation[];
  /** Stages at which something was lost, and why, as far as it is known. */
  readonly losses: readonly StageLoss[];
  /** Codes of the boxes that hold nothing, in walking order. */
  readonly freeBoxes: readonly string[];
  readonly spread: BatchSpread;
  readonly labelsPrintedOn: IsoDay | null;
  /** Mating flights so far; null before the first ones. */
  readonly flight: FlightView | null;
}

/** Before cells go into boxes: how many to keep in hand, and where those of each mother stand by now. */
export interface BatchSpread {
  /** Sealed cells to keep for boxes that fail; null where none were counted. */
  readonly spare: { readonly from: number; readonly to: number } | null;
  /** Code of the hive this batch's larvae came from. */
  readonly mother: string | null;
  /** Yards with a free box, or with a box that holds a cell or its queen; the null one has no name. */
  readonly yards: readonly {
    readonly yard: string | null;
    readonly freeBoxes: number;
    readonly mothers: readonly { readonly mother: string | null; readonly cells: number }[];
  }[];
  /** The one yard in which everything of this mother stands, where there is another one. */
  readonly allIn: string | null;
}

/** What the start form offers before anything is typed. */
export interface BatchFormOffer {
  readonly nextCode: string;
  readonly breeders: readonly HiveRef[];
  readonly builders: readonly (HiveRef & { readonly freeFrom: IsoDay | null; readonly heldBy: string | null })[];
  readonly methodCopies: readonly { readonly id: string; readonly name: string; readonly origin: Method }[];
  /** What earlier batches taught, the latest first. */
  readonly lessons: readonly {
    readonly batchId: string;
    readonly batch: string;
    readonly method: Method;
    readonly lesson: string;
  }[];
  readonly last: {
    readonly method: Method;
    readonly breederId: string | null;
    readonly builderId: string | null;
    readonly cells: number | null;
  } | null;
}

export type BatchesRefusal =
  | { readonly kind: 'no-cells-planned' }
  | { readonly kind: 'batch-not-found' }
  | { readonly kind: 'batch-code-taken'; readonly field: 'code'; readonly code: string }
  | { readonly kind: 'more-taken-than-given'; readonly field: 'taken'; readonly given: number; readonly taken: number }
  | {
      readonly kind: 'more-sealed-than-taken';
      readonly field: 'sealed';
      readonly taken: number;
      readonly sealed: number;
    }
  | {
      readonly kind: 'more-sealed-than-left';
      readonly field: 'sealed';
      readonly given: number;
      readonly removed: number;
      readonly sealed: number;
    }
  | {
      readonly kind: 'more-sealed-than-given';
      readonly field: 'sealed';
      readonly given: number;
      readonly sealed: number;
    }
  | {
      readonly kind: 'more-removed-than-taken';
      readonly field: 'removed';
      readonly taken: number;
      readonly removed: number;
    }
  | {
      readonly kind: 'more-placed-than-sealed';
      readonly field: 'sealed';
      readonly placed: number;
      readonly sealed: number;
    }
  | { readonly kind: 'day-before-start'; readonly field: string; readonly day: IsoDay; readonly start: IsoDay }
  | { readonly kind: 'comb-needed'; readonly field: 'comb' }
  | {
      readonly kind: 'builder-in-use';
      readonly field: 'builderId';
      readonly builder: string;
      readonly batch: string;
      readonly until: IsoDay;
    }
  | { readonly kind: 'hive-code-taken'; readonly field: 'newBreeder' | 'newBuilder' | 'code'; readonly code: string }
  | { readonly kind: 'hive-not-found'; readonly field: string }
  | { readonly kind: 'bar-not-found' }
  | { readonly kind: 'step-not-in-timetable'; readonly field: 'step'; readonly step: string }
  | { readonly kind: 'step-already-done'; readonly field: 'step'; readonly step: string }
  | { readonly kind: 'nothing-lost'; readonly field: 'cells'; readonly stage: LossStage }
  | {
      readonly kind: 'more-reasons-than-lost';
      readonly field: 'cells';
      readonly lost: number;
      readonly explained: number;
    }
  | { readonly kind: 'step-needed'; readonly field: 'step'; readonly step: string }
  | { readonly kind: 'move-past-window'; readonly field: 'movedTo'; readonly earliest: IsoDay; readonly latest: IsoDay }
  | { readonly kind: 'observation-not-found' };

/** What was taken out. */
export interface BatchRemoved {
  /** Its code. */
  readonly batch: string;
  /** How many queens with a number came from it; they stay. */
  readonly queens: number;
  /** Codes of hives that were made in its start form and were used by nothing else; they went with it. */
  readonly hives: readonly string[];
}

/** What a change of a batch answers: the batch as it now stands, and what is odd about it. */
export interface BatchChanged {
  readonly batch: BatchDetail;
  readonly notices: readonly Notice[];
}
