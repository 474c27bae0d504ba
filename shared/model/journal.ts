import type { IsoDay } from '../kernel/day.ts';
import type { FollowUpKind } from './follow-up.ts';
import type { LookResult } from './look.ts';
import type { LossReason, LossStage } from './loss.ts';
import type { PlacementEnd } from './mating-box.ts';
import type { PaperName } from './noted-paper.ts';
import type { QueenPlace } from './queen.ts';
import type { ObservationKind, Step } from './step.ts';

/** What one change did, as facts with the names of that day. Each has its sentence in shared/text/english/history.ts. */
export type ChangeWords =
  | {
      readonly did: 'start-batch' | 'edit-batch' | 'close-batch' | 'reopen-batch' | 'print-labels';
      readonly batch: string;
    }
  | {
      readonly did: 'remove-batch';
      readonly batch: string;
      /** With a number; they stay. */
      readonly queens: number;
      /** Codes of hives made in its start form and used by nothing else; missing in steps written before there was such a thing. */
      readonly hives?: readonly string[];
    }
  | { readonly did: 'add-bar' | 'record-bar-counts'; readonly batch: string; readonly bar: number | null }
  | {
      readonly did: 'mark-step' | 'unmark-step' | 'move-step' | 'drop-step' | 'take-up-step';
      readonly batch: string;
      readonly step: Step;
    }
  | {
      readonly did: 'record-observation' | 'remove-observation';
      readonly batch: string;
      readonly what: ObservationKind | null;
    }
  | {
      readonly did: 'record-loss';
      readonly batch: string;
      readonly stage: LossStage;
      readonly reason: LossReason;
      /** 0 = the reason was taken back. */
      readonly cells: number;
    }
  | { readonly did: 'give-as-planned'; readonly batch: string }
  | { readonly did: 'set-warmth'; readonly batch: string; readonly celsius: number | null }
  | { readonly did: 'save-weather' | 'print-yard-sheet'; readonly on: IsoDay }
  | ({ readonly did: 'print-paper' } & PaperName)
  | { readonly did: 'save-wish' | 'remove-wish'; readonly forWhom: string | null }
  | { readonly did: 'add-boxes'; readonly boxes: string }
  | { readonly did: 'place-cells'; readonly batch: string; readonly boxes: string }
  | {
      readonly did: 'record-look';
      readonly box: string;
      readonly result: LookResult;
      /** The number given to the queen with it. */
      readonly queen: string | null;
    }
  | { readonly did: 'remove-look'; readonly box: string; readonly on: IsoDay }
  | { readonly did: 'take-errand'; readonly from: string; readonly looks: number }
  | { readonly did: 'end-placement'; readonly box: string; readonly reason: PlacementEnd }
  | { readonly did: 'retire-box'; readonly box: string }
  | { readonly did: 'save-yard'; readonly yard: string }
  | {
      readonly did: 'save-hive' | 'record-score' | 'record-test' | 'record-treatment' | 'move-hive';
      readonly hive: string;
    }
  | { readonly did: 'set-roles'; readonly hive: string; readonly season: number }
  | { readonly did: 'record-hive-look' | 'remove-hive-look'; readonly hive: string; readonly on: IsoDay }
  | { readonly did: 'record-feeding' | 'remove-feeding'; readonly places: string; readonly on: IsoDay }
  | { readonly did: 'promise-queen' | 'take-back-promise'; readonly queen: string; readonly to: string }
  | { readonly did: 'save-queen' | 'record-feedback'; readonly queen: string }
  | { readonly did: 'move-queen'; readonly queen: string; readonly place: QueenPlace }
  | { readonly did: 'plan-look' | 'save-box'; readonly box: string }
  | { readonly did: 'answer-follow-up'; readonly what: FollowUpKind; readonly who: string }
  | { readonly did: 'save-method-copy'; readonly method: string }
  | { readonly did: 'save-settings' }
  | {
      readonly did: 'take-in-table';
      readonly what: 'hives' | 'boxes' | 'queens' | 'counts' | 'weather';
      readonly rows: number;
    }
  | { readonly did: 'take-in-workbook'; readonly name: string }
  /** A new workbook, with the person's habits in it; nothing before this is taken back. */
  | { readonly did: 'begin-workbook' }
  /** The made-up yard was told; nothing before this is taken back. */
  | { readonly did: 'build-demo' }
  /** A change without words of its own. */
  | { readonly did: 'other' };

export type StepKind = 'change' | 'undo' | 'redo' | 'begin';

/** One step of the journal. */
export interface JournalStep {
  readonly id: number;
  /** Instant, ISO 8601 UTC. */
  readonly at: string;
  readonly kind: StepKind;
  /** The step that an undo or redo is about. */
  readonly ofStep: number | null;
  readonly words: ChangeWords;
  /** Who typed it; null where nobody had been named. */
  readonly typedBy: string | null;
  /** A change that is taken back at present. */
  readonly undone: boolean;
}

/** The columns of a stored row and their values. */
export type StoredRow = Readonly<Record<string, string | number | null>>;

/** What one step did to one row: added (no old), changed, or removed (no new). */
export interface JournalChange {
  readonly id: number;
  readonly stepId: number;
  readonly table: string;
  readonly rowId: string;
  readonly old: StoredRow | null;
  readonly new: StoredRow | null;
}
