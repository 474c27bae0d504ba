import type { z } from 'zod';
import type { FieldChange, GetRecord, RecordKind, RecordStep, RowChange } from '../../../shared/contract/history.ts';
import type { JournalChange, StoredRow } from '../../../shared/model/journal.ts';
import type { JournalReader, Owner } from '../../workbook/journal/journal-steps.ts';
import type { Desk } from '../operation.ts';

const OWNER_COLUMN: Readonly<Record<RecordKind, Owner['column']>> = {
  batch: 'batch_id',
  box: 'box_id',
  hive: 'colony_id',
  queen: 'queen_id',
};

/** The steps that touched a batch, box, hive or queen or a row that belongs to it, newest first, with old and new values. */
export function getRecord({ workbook }: Desk, { record, id }: z.infer<typeof GetRecord>): readonly RecordStep[] {
  const { journal } = workbook;
  const owner = OWNER_COLUMN[record];
  const rowsByStep = new Map<number, RowChange[]>();
  for (const change of journal.changesOf({ id, column: owner })) {
    if (change.table === 'batch_tally') continue;
    const rows = rowsByStep.get(change.stepId) ?? [];
    rows.unshift(rowChange(journal, change, owner));
    rowsByStep.set(change.stepId, rows);
  }
  return [...rowsByStep].flatMap(([stepId, rows]) => {
    const step = journal.step(stepId);
    return step === null ? [] : [{ step, rows }];
  });
}

/** Columns that tell a row from its sisters, so that a changed value says which bar or day it belongs to. */
const TELLING: Readonly<Record<string, readonly string[]>> = {
  bar: ['number'],
  count: ['bar_id', 'stage'],
  step_done: ['step'],
  step_move: ['step'],
  step_drop: ['step'],
  loss: ['stage', 'reason'],
  observation: ['what'],
  placement: ['box_id'],
  box_look: ['looked_on'],
  hive_look: ['looked_on'],
  feeding: ['fed_on'],
  colony_role: ['season', 'role'],
  queen: ['number'],
  queen_move: ['moved_on'],
  queen_feedback: ['told_on'],
  queen_promise: ['promised_on'],
  follow_up: ['what'],
};

/** Whose row it is needs no saying on the owner's own page, unless the row went from one owner to another. */
function rowChange(journal: JournalReader, { id, table, old, new: fresh }: JournalChange, owner: string): RowChange {
  const telling = TELLING[table] ?? [];
  const row = fresh ?? old ?? {};
  const named = (column: string, values: StoredRow | null) => nameOf(journal, column, values?.[column] ?? null);
  const fields = Object.keys(row)
    .filter((column) => column !== 'id' && canBeSaid(column))
    .filter((column) => (old?.[column] ?? null) !== (fresh?.[column] ?? null))
    .map((field): FieldChange => ({ field, old: named(field, old), new: named(field, fresh) }));
  const what = old === null ? 'added' : fresh === null ? 'removed' : 'changed';
  const about = telling.flatMap((field) => {
    const value = named(field, row);
    return value === null ? [] : [{ field, value }];
  });
  const known = [...telling, owner];
  const said = what === 'changed' ? fields : fields.filter(({ field }) => !known.includes(field));
  return { id, table, what, fields: said, about };
}

/** Whose name stands for an id: its table, and the column a person knows it by. */
const NAMED_BY: Readonly<Record<string, readonly [table: string, column: string]>> = {
  batch_id: ['batch', 'code'],
  bar_id: ['bar', 'number'],
  box_id: ['mating_box', 'code'],
  colony_id: ['colony', 'code'],
  queen_id: ['queen', 'number'],
  mother_id: ['queen', 'number'],
  breeder_id: ['colony', 'code'],
  builder_id: ['colony', 'code'],
  yard_id: ['yard', 'name'],
  method_copy_id: ['method_copy', 'name'],
};

/** A cell is known by its batch. */
const CELL = 'placement_id';

const canBeSaid = (column: string): boolean => !column.endsWith('_id') || column === CELL || column in NAMED_BY;

/** A value as a person knows it. A row that is gone is called by the name it last had. */
function nameOf(journal: JournalReader, column: string, value: string | number | null): string | number | null {
  if (value === null) return null;
  if (column === CELL)
    return nameOf(journal, 'batch_id', journal.lastRow('placement', String(value))?.batch_id ?? null);
  const by = NAMED_BY[column];
  return by ? (journal.lastRow(by[0], String(value))?.[by[1]] ?? null) : value;
}
