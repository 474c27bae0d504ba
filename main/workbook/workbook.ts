import type { CopyList, CopyPurpose, Harm, SafetyCopy } from '../../shared/contract/copies.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import type { RateStage } from '../../shared/contract/season.ts';
import type {
  Packed,
  ReadOnlyReason,
  RiskyPlace,
  WorkbookKind,
  WorkbookRef,
  WorkbookState,
} from '../../shared/contract/workbook.ts';
import type { IsoDay } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { Bar, Batch, Count, StepDone, StepDrop, StepMove } from '../../shared/model/batch.ts';
import type { CalendarExport } from '../../shared/model/calendar-export.ts';
import type { Colony, ColonyRole } from '../../shared/model/colony.ts';
import type { Feeding } from '../../shared/model/feeding.ts';
import type { FollowUp } from '../../shared/model/follow-up.ts';
import type { ColonyMove, Treatment } from '../../shared/model/hive-record.ts';
import type { ChangeWords, JournalStep } from '../../shared/model/journal.ts';
import type { LabelPrint } from '../../shared/model/label-print.ts';
import type { BoxLook, HiveLook } from '../../shared/model/look.ts';
import type { Loss } from '../../shared/model/loss.ts';
import type { MatingBox, Placement } from '../../shared/model/mating-box.ts';
import type { MethodCopy } from '../../shared/model/method-copy.ts';
import type { Observation } from '../../shared/model/observation.ts';
import type { Queen } from '../../shared/model/queen.ts';
import type { QueenPromise } from '../../shared/model/queen-promise.ts';
import type { QueenFeedback, QueenMove } from '../../shared/model/queen-story.ts';
import type { StockScore, StockTest } from '../../shared/model/stock.ts';
import type { BarSums, BatchTally } from '../../shared/model/tally.ts';
import type { WeatherDay } from '../../shared/model/weather.ts';
import type { Wish } from '../../shared/model/wish.ts';
import type { Yard } from '../../shared/model/yard.ts';
import type { DraftStore } from './drafts.ts';
import type { ExtractTrouble } from './extract.ts';
import type { JournalReader } from './journal/journal-steps.ts';

/** One kind of record in the open workbook. Every method is one prepared statement. */
export interface Table<Row extends { readonly id: Id }> {
  insert(row: Row): void;
  /** Writes the whole row over the one with the same id. */
  update(row: Row): void;
  remove(id: Id): void;
  get(id: Id): Row | null;
  all(): readonly Row[];
  /** Rows whose named fields equal the given values; null matches null. */
  where(match: Partial<Row>): readonly Row[];
  /** The different values of one field, smallest first. */
  distinct<Field extends keyof Row & string>(field: Field): readonly Row[Field][];
}

export interface TallyTable {
  get(batchId: Id): BatchTally | null;
  put(tally: BatchTally): void;
  /** The counts of a batch's bars added up by the file itself, for the tally to be made of. */
  barSums(batchId: Id): BarSums;
  ofSeason(season: number): readonly BatchTally[];
  remove(batchId: Id): void;
  all(): readonly BatchTally[];
  /** Of one season, or of all: the sums beside what a comparison groups batches by, and nothing else of the batch. */
  forComparing(season: number | null): readonly ComparedTally[];
}

/** What a comparison groups a batch by. */
export type BatchGrouping = Pick<
  Batch,
  'id' | 'season' | 'practice' | 'method' | 'methodCopyId' | 'builderId' | 'breederId'
>;

export type ComparedTally = BatchTally & BatchGrouping;

/** One stage added up over batches. */
export interface StageSum {
  readonly successes: number;
  readonly of: number;
  /** Batches in which both ends of the stage were counted. */
  readonly batches: number;
}

/** What the batches of one group came to. */
export interface GroupSum {
  readonly level: string;
  /** Level of the second factor; '' where only one was asked for. */
  readonly other: string;
  readonly batches: number;
  readonly stages: Readonly<Record<RateStage, StageSum>>;
}

/** One group in one season, practice apart. */
export interface SeasonSum extends GroupSum {
  readonly season: number;
  readonly practice: boolean;
}

/** Sums of whole seasons by question (the factors asked for); a season's are gone as soon as anything in it changes. */
export interface SeasonSumTable {
  /** Seasons with batches, earliest first. */
  seasons(): readonly number[];
  /** Seasons whose sums for this question are not kept. */
  missing(question: string): readonly number[];
  /** Outside a change too: nothing of it is part of the workbook. */
  keep(question: string, sums: readonly SeasonSum[]): void;
  sums(question: string, season: number | null, leaveOutPractice: boolean): readonly GroupSum[];
  /** How many rows are kept for a question: what `sums` reads. */
  kept(question: string): number;
}

/** Flight weather, one row a day. */
export interface WeatherTable extends Table<WeatherDay> {
  /** Both ends included, earliest first. */
  between(from: IsoDay, to: IsoDay): readonly WeatherDay[];
}

/** Small values by key, as JSON: settings, the next free label of a sheet, the day an invented yard is held at. */
export interface SettingTable {
  get(key: string): unknown;
  put(key: string, value: unknown): void;
  all(): Readonly<Record<string, unknown>>;
}

export interface Tables {
  readonly yards: Table<Yard>;
  readonly colonies: Table<Colony>;
  readonly colonyRoles: Table<ColonyRole>;
  readonly methodCopies: Table<MethodCopy>;
  readonly batches: Table<Batch>;
  readonly bars: Table<Bar>;
  readonly counts: Table<Count>;
  readonly stepsDone: Table<StepDone>;
  readonly stepMoves: Table<StepMove>;
  readonly stepDrops: Table<StepDrop>;
  readonly losses: Table<Loss>;
  readonly observations: Table<Observation>;
  readonly boxes: Table<MatingBox>;
  readonly placements: Table<Placement>;
  readonly boxLooks: Table<BoxLook>;
  readonly hiveLooks: Table<HiveLook>;
  readonly queens: Table<Queen>;
  readonly queenMoves: Table<QueenMove>;
  readonly queenFeedback: Table<QueenFeedback>;
  readonly followUps: Table<FollowUp>;
  readonly stockScores: Table<StockScore>;
  readonly stockTests: Table<StockTest>;
  readonly feedings: Table<Feeding>;
  readonly treatments: Table<Treatment>;
  readonly colonyMoves: Table<ColonyMove>;
  readonly labelPrints: Table<LabelPrint>;
  readonly calendarExports: Table<CalendarExport>;
  readonly tallies: TallyTable;
  readonly seasonSums: SeasonSumTable;
  readonly weather: WeatherTable;
  readonly wishes: Table<Wish>;
  readonly queenPromises: Table<QueenPromise>;
  readonly settings: SettingTable;
}

/** What a step did; a function where that is known only once the work is done. It sees the tables as the work left them. */
export type ChangeNaming<Value> = ChangeWords | ((tables: Tables, value: Value) => ChangeWords);

export interface Workbook {
  readonly name: string;
  readonly file: string;
  readonly kind: WorkbookKind;
  readonly readOnly: boolean;
  /** Why it can only be read; null when it can be written. */
  readonly readOnlyBecause: ReadOnlyReason | null;
  /** A place in which the file can come to harm; null when there is no sign of that. */
  readonly riskyPlace: RiskyPlace | null;
  /** Of the file's format. */
  readonly version: number;
  /** Number of the last change that is in the file; 0 before the first. */
  readonly changeNumber: number;
  /** Instant of the last change that is in the file, ISO 8601 UTC; null before the first. */
  readonly savedAt: string | null;
  /** For reading. */
  readonly tables: Tables;
  /** What was changed and when, for reading. */
  readonly journal: JournalReader;
  /**
   * One named step, one transaction: all of it is on disk when this returns `ok`, none of it when it is refused.
   * A full disk or a failing drive comes back as the refusal `not-saved`. A change that wrote nothing makes no step.
   */
  change<Value>(step: ChangeNaming<Value>, work: (tables: Tables) => Result<Value, Refusal>): Result<Value, Refusal>;
  /** A checked safety copy in the program's own folder, before something that could go wrong; null when not on disk. */
  keepCopy(purpose: CopyPurpose): Result<string | null, Refusal>;
  /** All rows into a new file of that name, checked; for when this one can no longer be written. */
  saveAs(file: string): Result<null, Refusal>;
  /** A new workbook of that name with the same tables, filled and given as the bytes of its file; nothing is kept. */
  extract(name: string, fill: (tables: Tables) => void): Uint8Array;
  /** Reads from the bytes of a workbook file that came from elsewhere. */
  readExtract<Value>(bytes: Uint8Array, read: (tables: Tables) => Value): Result<Value, ExtractTrouble>;
  /**
   * Every page as it lies in the file, sound or not, into a new file; a few at a time, so that saving goes on meanwhile.
   * 'damaged' where pages cannot even be read, 'not-copied' where the copy could not be written or the workbook was closed.
   */
  copyPages(file: string): Promise<{ readonly changedMeanwhile: boolean } | 'damaged' | 'not-copied'>;
  /** Takes the last step back, as one step of its own; answers what was taken back. */
  undo(): Result<JournalStep, Refusal>;
  /**
   * Takes back the step of this number and all later ones that stand, the latest first, each as a step of its own; all of
   * them or none. Answers what was taken back.
   */
  undoFrom(step: number): Result<readonly JournalStep[], Refusal>;
  /** Does again what was taken back last, as one step of its own; answers what was done again. */
  redo(): Result<JournalStep, Refusal>;
  close(): void;
}

/** What a thorough look at the file found; `changed` is a row that is not what it was when its digest was taken. */
export type Soundness = 'sound' | 'damaged' | 'changed';

/** Looks thoroughly at a file that nobody has open; where the shell has one, in a thread of its own. */
export type CheckFile = (file: string, expectedDigest: string | null) => Promise<Soundness>;

/** What can be done with safety copies; part of the keeper, since going back changes which workbook is open. */
export interface Copies {
  list(): CopyList;
  make(purpose: CopyPurpose): Result<SafetyCopy, Refusal>;
  /** Makes one when there were changes, the last is old enough, and nobody is typing. Asked every few seconds. */
  makeIfDue(): void;
  /** Makes one when the workbook was changed since the last. */
  makeAtClose(): void;
  /** A little after opening: looks at all pages once and compares the rows with the copy made at closing. */
  checkIfDue(): Promise<void>;
  /** What that check found wrong; null while nothing is known to be. */
  readonly harm: Harm | null;
  /** Opens a copy for reading; the workbook stays open, and held, behind it. */
  look(id: SafetyCopy['id']): Result<Workbook, Refusal>;
  leave(): void;
  /** Puts a copy in the workbook's place. The workbook as it is stays beside it under a dated name, which is returned. */
  restore(id: SafetyCopy['id'], folder: string | null): Result<{ readonly keptAs: string | null }, Refusal>;
  setSecondPlace(folder: string | null): Result<null, Refusal>;
  /** Old copies may go again. */
  release(): void;
  /** The safety copy that is being looked at. */
  readonly lookingAt: SafetyCopy | null;
}

/** Which workbook is open and which are known on this computer. There is one keeper per running program. */
export interface Keeper {
  readonly current: Workbook | null;
  readonly copies: Copies;
  readonly drafts: DraftStore;
  known(): Pick<WorkbookState, 'missing' | 'notOpened' | 'recent' | 'usualFolder'>;
  /** Makes a new file and opens it. An existing file is never replaced. */
  begin(name: WorkbookRef['name'], folder: string | null): Result<Workbook, Refusal>;
  /** Opens a file, or unpacks and opens a package; the workbook open until now stays open when that is refused. */
  open(file: WorkbookRef['file']): Result<Workbook, Refusal>;
  /** Shows a workbook that another program is writing in, as it is at this moment; asked again, anew. Nothing can be changed. */
  lookAt(file: WorkbookRef['file']): Result<Workbook, Refusal>;
  /** Writes all rows of what is shown into a new file in another folder, and opens that. The first file stays as it is. */
  saveElsewhere(folder: string): Result<Workbook, Refusal>;
  /** One zip with the workbook and its safety copies, for another computer; null = the usual folder. */
  pack(folder: string | null): Result<Packed, Refusal>;
  /** Opens the demo, first having it built where it is missing or was built by another version of the program. */
  openDemo(version: string, build: (demo: Workbook) => void): Result<Workbook, Refusal>;
  /** Opens the practice workbook as it was left, first having it built where there is none. */
  openPractice(version: string, build: (practice: Workbook) => void): Result<Workbook, Refusal>;
  /** Builds the practice workbook anew. Refused, and nothing touched, unless it is the workbook that is open. */
  resetPractice(version: string, build: (practice: Workbook) => void): Result<Workbook, Refusal>;
  /** The person closes the workbook: the next start asks which one to open. */
  close(): void;
  /** The program ends: the next start opens the same workbook again. */
  stop(): void;
}
