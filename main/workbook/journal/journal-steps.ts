import type BetterSqlite3 from 'better-sqlite3';
import type { ChangeWords, JournalChange, JournalStep, StepKind, StoredRow } from '../../../shared/model/journal.ts';
import type { OWNERS } from './journal-triggers.ts';

/** Whose changes are asked for: a record and the rows that belong to it. */
export interface Owner {
  readonly id: string;
  readonly column: keyof typeof OWNERS;
}

/** The steps of a workbook, for reading. */
export interface JournalReader {
  /** Newest first; those before a step, when one is given. */
  steps(before: number | null, limit: number): readonly JournalStep[];
  step(id: number): JournalStep | null;
  /** The step that an undo would take back: the newest that stands, back to the last that must not be taken back. */
  toUndo(): JournalStep | null;
  /** The first number of a step that can be taken back. */
  undoableFrom(): number;
  /** The step that a redo would do again: the one taken back last, unless something was changed since. */
  toRedo(): JournalStep | null;
  /** Every change of a record and of the rows that belong to it, newest first. */
  changesOf(owner: Owner): readonly JournalChange[];
  /** Those of its changes that came after a step, oldest first. */
  changesSince(step: number, owner: Owner): readonly JournalChange[];
  /** The values a row has, or had last when it is gone. */
  lastRow(table: string, rowId: string): StoredRow | null;
}

export interface StepToWrite {
  readonly kind: StepKind;
  readonly ofStep: number | null;
  readonly words: ChangeWords;
}

export interface JournalSteps extends JournalReader {
  /** Whether rows were written since the last step. */
  hasOpenChanges(): boolean;
  /** Gives the rows written since the last step their name. */
  write(step: StepToWrite, at: string): void;
}

interface StoredStep {
  readonly id: number;
  readonly at: string;
  readonly kind: StepKind;
  readonly ofStep: number | null;
  readonly words: string;
  readonly typedBy: string | null;
  readonly undone: 0 | 1;
}

interface StoredChange extends Omit<JournalChange, 'old' | 'new'> {
  readonly old: string | null;
  readonly new: string | null;
}

/** The newest undo or redo about a step says whether it stands. */
const UNDONE = `coalesce((SELECT later.kind = 'undo' FROM journal_step AS later WHERE later.of_step = step.id
  ORDER BY later.id DESC LIMIT 1), 0)`;
const STEP = `SELECT step.id, step.at, step.kind, step.of_step AS ofStep, step.words, step.typed_by AS typedBy, ${UNDONE} AS undone FROM journal_step AS step`;
const CHANGE =
  'SELECT id, step_id AS stepId, table_name AS "table", row_id AS rowId, old, new FROM journal_change AS change';

export function journalSteps(db: BetterSqlite3.Database): JournalSteps {
  const before = db.prepare<[number, number], StoredStep>(`${STEP} WHERE step.id < ? ORDER BY step.id DESC LIMIT ?`);
  const one = db.prepare<[number], StoredStep>(`${STEP} WHERE step.id = ?`);
  const standing = db.prepare<[], StoredStep>(
    `${STEP} WHERE step.kind = 'change' AND NOT ${UNDONE}
       AND step.id > coalesce((SELECT max(id) FROM journal_step WHERE kind = 'begin'), 0) ORDER BY step.id DESC LIMIT 1`,
  );
  const begun = db.prepare<[], number>("SELECT coalesce(max(id), 0) FROM journal_step WHERE kind = 'begin'").pluck();
  const sinceChange = db.prepare<[], { readonly kind: StepKind; readonly ofStep: number }>(
    `SELECT kind, of_step AS ofStep FROM journal_step
     WHERE id > coalesce((SELECT max(id) FROM journal_step WHERE kind IN ('change', 'begin')), 0) ORDER BY id`,
  );
  const open = db.prepare<[], number>(
    'SELECT 1 FROM journal_change WHERE step_id > coalesce((SELECT max(id) FROM journal_step), 0) LIMIT 1',
  );
  const insert = db.prepare<[string, StepKind, number | null, string]>(
    `INSERT INTO journal_step (at, kind, of_step, words, typed_by)
     VALUES (?, ?, ?, ?, (SELECT json_extract(value, '$') FROM setting WHERE key = 'writer'))`,
  );
  const last = db.prepare<[string, string], { readonly kept: string }>(
    'SELECT old AS kept FROM journal_change WHERE table_name = ? AND row_id = ? AND new IS NULL ORDER BY id DESC LIMIT 1',
  );
  return {
    steps: (id, limit) => before.all(id ?? Number.MAX_SAFE_INTEGER, limit).map(stepOf),
    step: (id) => stepOrNull(one.get(id)),
    toUndo: () => stepOrNull(standing.get()),
    undoableFrom: () => (begun.get() ?? 0) + 1,
    toRedo() {
      const id = lastTakenBack(sinceChange.all());
      return id === undefined ? null : stepOrNull(one.get(id));
    },
    ...changeReader(db),
    lastRow(table, rowId) {
      const there = db.prepare<[string], StoredRow>(`SELECT * FROM "${table}" WHERE id = ?`).get(rowId);
      if (there !== undefined) return there;
      const row = last.get(table, rowId);
      return row === undefined ? null : (JSON.parse(row.kept) as StoredRow);
    },
    hasOpenChanges: () => open.get() !== undefined,
    write({ kind, ofStep, words }, at) {
      insert.run(at, kind, ofStep, JSON.stringify(words));
    },
  };
}

const changeReader = (db: BetterSqlite3.Database): Pick<JournalReader, 'changesOf' | 'changesSince'> => ({
  changesOf: ({ id, column }) =>
    db
      .prepare<[string], StoredChange>(`${CHANGE} WHERE change.${column} = ? ORDER BY change.id DESC`)
      .all(id)
      .map(changeOf),
  changesSince: (step, { id, column }) =>
    db
      .prepare<[string, number], StoredChange>(
        `${CHANGE} WHERE change.${column} = ? AND change.step_id > ? ORDER BY change.id`,
      )
      .all(id, step)
      .map(changeOf),
});

/** Undos and redos in their order: what was taken back and not done again, the latest of it. */
function lastTakenBack(turns: readonly { readonly kind: StepKind; readonly ofStep: number }[]): number | undefined {
  const takenBack: number[] = [];
  for (const { kind, ofStep } of turns) {
    if (kind === 'undo') takenBack.push(ofStep);
    else takenBack.pop();
  }
  return takenBack.at(-1);
}

const stepOf = (stored: StoredStep): JournalStep => ({
  ...stored,
  words: JSON.parse(stored.words) as ChangeWords,
  undone: stored.undone === 1,
});

const stepOrNull = (stored: StoredStep | undefined): JournalStep | null =>
  stored === undefined ? null : stepOf(stored);

export const changeOf = (stored: StoredChange): JournalChange => ({
  ...stored,
  old: stored.old === null ? null : (JSON.parse(stored.old) as StoredRow),
  new: stored.new === null ? null : (JSON.parse(stored.new) as StoredRow),
});
