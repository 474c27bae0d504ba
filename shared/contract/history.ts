import { z } from 'zod';
import { IdField } from '../model/fields.ts';
import type { ChangeWords, JournalStep } from '../model/journal.ts';

export const ListSteps = z.object({
  /** Steps older than this one; null begins with the newest. */
  before: z.int().min(1).nullable(),
  limit: z.int().min(1).max(200),
});

/** This change and all later ones that stand. */
export const UndoFrom = z.object({ step: z.int().min(1) });

/** What a person looks at as one thing; the rows that belong to it come with it. */
export const RECORD_KINDS = ['batch', 'box', 'hive', 'queen'] as const;
export type RecordKind = (typeof RECORD_KINDS)[number];
export const GetRecord = z.object({ record: z.enum(RECORD_KINDS), id: IdField });

/** What Ctrl+Z and Ctrl+Y would do; null = nothing. */
export interface UndoState {
  readonly undo: JournalStep | null;
  readonly redo: JournalStep | null;
}

export interface StepList extends UndoState {
  readonly steps: readonly JournalStep[];
  /** Changes below this number are not taken back: the made-up yard was told with them. */
  readonly undoableFrom: number;
  /** There are older ones. */
  readonly more: boolean;
}

/** One field before and after; hives, boxes, batches and bars by the names they go by. */
export interface FieldChange {
  readonly field: string;
  readonly old: string | number | null;
  readonly new: string | number | null;
}

export interface RowChange {
  readonly id: number;
  readonly table: string;
  readonly what: 'added' | 'changed' | 'removed';
  /** What tells the row from its sisters: the bar and stage of a count, the day of a look. */
  readonly fields: readonly FieldChange[];
  readonly about: readonly { readonly field: string; readonly value: string | number }[];
}

export interface RecordStep {
  readonly step: JournalStep;
  readonly rows: readonly RowChange[];
}

export type HistoryRefusal =
  | { readonly kind: 'nothing-to-undo' }
  | { readonly kind: 'nothing-to-redo' }
  /** A row the step wrote is not as it left it, although no later step says so. */
  | { readonly kind: 'changed-since'; readonly way: 'undo' | 'redo'; readonly words: ChangeWords };
