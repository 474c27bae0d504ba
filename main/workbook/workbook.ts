import type { Refusal } from '../../shared/contract/refusal.ts';
import type { WorkbookRef, WorkbookState } from '../../shared/contract/workbook.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { Result } from '../../shared/kernel/result.ts';
import type { Bar, Batch, Count, StepDone, StepMove } from '../../shared/model/batch.ts';
import type { Colony, ColonyRole } from '../../shared/model/colony.ts';
import type { LabelPrint } from '../../shared/model/label-print.ts';
import type { BoxLook, HiveLook } from '../../shared/model/look.ts';
import type { MatingBox, Placement } from '../../shared/model/mating-box.ts';
import type { MethodCopy } from '../../shared/model/method-copy.ts';
import type { Observation } from '../../shared/model/observation.ts';
import type { Queen } from '../../shared/model/queen.ts';
import type { BatchTally } from '../../shared/model/tally.ts';
import type { Yard } from '../../shared/model/yard.ts';

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
}

export interface TallyTable {
  get(batchId: Id): BatchTally | null;
  put(tally: BatchTally): void;
  all(): readonly BatchTally[];
}

/** Small values by key, as JSON: settings, the next free label of a sheet, the day the demo is held at. */
export interface SettingTable {
  get(key: string): unknown;
  put(key: string, value: unknown): void;
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
  readonly observations: Table<Observation>;
  readonly boxes: Table<MatingBox>;
  readonly placements: Table<Placement>;
  readonly boxLooks: Table<BoxLook>;
  readonly hiveLooks: Table<HiveLook>;
  readonly queens: Table<Queen>;
  readonly labelPrints: Table<LabelPrint>;
  readonly tallies: TallyTable;
  readonly settings: SettingTable;
}

export interface Workbook {
  readonly name: string;
  readonly file: string;
  readonly kind: 'real' | 'demo';
  readonly readOnly: boolean;
  /** Instant of the last change that is in the file, ISO 8601 UTC; null before the first. */
  readonly savedAt: string | null;
  /** For reading. */
  readonly tables: Tables;
  /**
   * One named change, one transaction: all of it is on disk when this returns `ok`, none of it when it is refused.
   * A full disk or a failing drive comes back as the refusal `not-saved`.
   */
  change<Value>(label: string, work: (tables: Tables) => Result<Value, Refusal>): Result<Value, Refusal>;
  close(): void;
}

/** Which workbook is open and which are known on this computer. There is one keeper per running program. */
export interface Keeper {
  readonly current: Workbook | null;
  known(): Pick<WorkbookState, 'missing' | 'recent' | 'usualFolder'>;
  /** Makes a new file and opens it. An existing file is never replaced. */
  begin(name: WorkbookRef['name'], folder: string | null): Result<Workbook, Refusal>;
  /** Opens a file; the workbook open until now stays open when that is refused. */
  open(file: WorkbookRef['file']): Result<Workbook, Refusal>;
  /** Opens the demo, first having it built where it is missing or was built by another version of the program. */
  openDemo(version: string, build: (demo: Workbook) => void): Result<Workbook, Refusal>;
  /** The person closes the workbook: the next start asks which one to open. */
  close(): void;
  /** The program ends: the next start opens the same workbook again. */
  stop(): void;
}
