import type { CalendarRefusal } from '../model/timetable.ts';
import type { BatchesRefusal } from './batches.ts';
import type { BoxesRefusal } from './boxes.ts';
import type { CopiesRefusal } from './copies.ts';
import type { ErrandRefusal } from './errand.ts';
import type { FeedingRefusal } from './feeding.ts';
import type { FilesRefusal } from './files.ts';
import type { FollowUpsRefusal } from './follow-ups.ts';
import type { HistoryRefusal } from './history.ts';
import type { HivesRefusal } from './hives.ts';
import type { ImportRefusal } from './import.ts';
import type { MethodsRefusal } from './methods.ts';
import type { PrintRefusal } from './print.ts';
import type { QueensRefusal } from './queens.ts';
import type { SeasonRefusal } from './season.ts';
import type { WishRefusal } from './season-plan.ts';
import type { SettingsRefusal } from './settings.ts';
import type { StockRefusal } from './stock.ts';
import type { WorkbookRefusal } from './workbook.ts';

/**
 * Every reason for which an operation may decline, as facts with their figures. `field` names the input it concerns, so
 * that a form can put the sentence beside it. Each kind has one sentence in shared/text/english/refusals.ts.
 */
export type Refusal =
  | WorkbookRefusal
  | CopiesRefusal
  | BatchesRefusal
  | HivesRefusal
  | BoxesRefusal
  | ErrandRefusal
  | QueensRefusal
  | FollowUpsRefusal
  | StockRefusal
  | FeedingRefusal
  | MethodsRefusal
  | PrintRefusal
  | SeasonRefusal
  | WishRefusal
  | FilesRefusal
  | ImportRefusal
  | SettingsRefusal
  | HistoryRefusal
  | CalendarRefusal
  | { readonly kind: 'no-workbook-open' }
  | { readonly kind: 'not-saved'; readonly reason: 'disk-full' | 'drive-error' | 'read-only' | 'file-replaced' }
  /** A value that does not fit its field at all; `field` is the path in the input. */
  | { readonly kind: 'not-valid'; readonly field: string; readonly expected: 'number' | 'day' | 'text' | 'choice' };

/** Something improbable that was kept all the same; shown beside the row, never a stop. */
export type Notice =
  | { readonly kind: 'low-take'; readonly field: string; readonly given: number; readonly taken: number }
  | { readonly kind: 'many-cells-for-builder'; readonly cells: number; readonly usualMost: number }
  | { readonly kind: 'look-during-hands-off'; readonly box: string; readonly until: string }
  | { readonly kind: 'move-during-hands-off'; readonly hive: string; readonly until: string }
  | {
      readonly kind: 'two-cells-that-day';
      readonly box: string;
      readonly batch: string;
      /** Counts for the cell put in on that day, or for the one taken out. */
      readonly which: 'new' | 'earlier';
    }
  | { readonly kind: 'late-for-mating'; readonly box: string; readonly daysSinceEmergence: number }
  | { readonly kind: 'early-result'; readonly box: string; readonly result: string; readonly daysSincePlaced: number }
  | { readonly kind: 'box-just-emptied'; readonly box: string; readonly from: string }
  | { readonly kind: 'queen-not-proved'; readonly queen: string }
  | { readonly kind: 'queen-promised-to-other'; readonly queen: string; readonly to: string }
  | { readonly kind: 'young-queen'; readonly queen: string; readonly days: number }
  | { readonly kind: 'hive-has-queen'; readonly hive: string; readonly queen: string }
  | { readonly kind: 'builder-resting'; readonly builder: string; readonly until: string }
  | { readonly kind: 'feed-job-done'; readonly batch: string }
  | { readonly kind: 'emergence-near'; readonly earliest: string }
  | { readonly kind: 'look-before-emergence'; readonly step: string; readonly earliest: string }
  | { readonly kind: 'day-in-future'; readonly field: string; readonly day: string };
