import type BetterSqlite3 from 'better-sqlite3';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Table } from '../workbook.ts';

export type SqlValue = string | number | null;

/** How one field of a record lies in its column. null = it goes in, and comes back, just as the record has it. */
export interface Column<Value> {
  readonly sql: string;
  readonly write: ((value: Value) => SqlValue) | null;
  readonly read: ((stored: SqlValue) => Value) | null;
}

type Columns<Row> = { readonly [Field in keyof Row]-?: Column<Row[Field]> };

export interface TableShape<Row> {
  readonly name: string;
  readonly columns: Columns<Row>;
}

/** A text or number that is the same in the record and in the column. */
export const plain = <Value extends string | number | null>(sql: string): Column<Value> => ({
  sql,
  write: null,
  read: null,
});

/** SQLite has no true and false of its own: 1 and 0. */
export const flag = (sql: string): Column<boolean> => ({
  sql,
  write: (value) => (value ? 1 : 0),
  read: (stored) => stored === 1,
});

/** A list or object kept as JSON text; `parse` is the schema of that field, since SQLite cannot vouch for its shape. */
export const json = <Value>(sql: string, parse: (value: unknown) => Value): Column<Value> => ({
  sql,
  write: (value) => JSON.stringify(value),
  read: (stored) => parse(JSON.parse(String(stored))),
});

/** Throws unless a change of the workbook is under way; each table asks it before it writes. */
export type WriteGuard = () => void;

/**
 * The five statements every kind of record needs. Statements are prepared on first use and kept; `where` keeps one per
 * set of named fields. Types are held by STRICT tables and by the schema at the door, so rows are not parsed again.
 */
export function defineTable<Row extends { readonly id: Id }>(
  db: BetterSqlite3.Database,
  shape: TableShape<Row>,
  guardWrite: WriteGuard,
): Table<Row> {
  const columns = columnList(shape);
  const quotedName = quote(shape.name);
  const statement = statementCache(db);
  const select = `SELECT ${columns.map(({ sql, field }) => `${quote(sql)} AS ${quote(field)}`).join(', ')} FROM ${quotedName}`;
  const rowToRecord = recordReader<Row>(columns);
  const valuesOf = (row: Row): SqlValue[] => {
    const values: SqlValue[] = [];
    for (const column of columns) values.push(storedForm(column, row));
    return values;
  };

  const names = columns.map(({ sql }) => quote(sql));
  const insert = insertInto(db, quotedName, names);
  const update = updateOfWhatDiffers(db, quotedName, names);

  return {
    insert(row) {
      guardWrite();
      insert(valuesOf(row));
    },
    update(row) {
      guardWrite();
      if (!update(row.id, valuesOf(row))) throw new Error(`No ${shape.name} with id ${row.id} to update.`);
    },
    remove(id) {
      guardWrite();
      const { changes } = statement(`DELETE FROM ${quotedName} WHERE "id" = ?`).run(id);
      if (changes !== 1) throw new Error(`No ${shape.name} with id ${id} to remove.`);
    },
    get(id) {
      const stored = statement(`${select} WHERE "id" = ?`).get(id);
      return stored === undefined ? null : rowToRecord(stored);
    },
    all: () => statement(`${select} ORDER BY rowid`).all().map(rowToRecord),
    where(match) {
      const { condition, values } = conditionOf(columns, match, shape.name);
      return statement(`${select}${condition} ORDER BY rowid`).all(values).map(rowToRecord);
    },
    distinct(field) {
      const { sql, values } = distinctOf(columns, field, shape.name);
      return values(statement(sql).all()) as readonly Row[typeof field][];
    },
  };
}

function insertInto(db: BetterSqlite3.Database, table: string, names: readonly string[]) {
  let insert: BetterSqlite3.Statement<unknown[], unknown> | null = null;
  return (values: readonly SqlValue[]): void => {
    insert ??= db.prepare(`INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})`);
    insert.run(values);
  };
}

/**
 * Writes the values that are not as they are stored; false where the row is not there. A column that is set costs its
 * indexes and foreign keys a write and a look, also with the value it had.
 */
function updateOfWhatDiffers(db: BetterSqlite3.Database, table: string, names: readonly string[]) {
  let select: BetterSqlite3.Statement<[Id], SqlValue[]> | null = null;
  // By which columns differ, one letter for each: a form saves forty rows in which the same few do.
  const updates = new Map<string, BetterSqlite3.Statement<unknown[], unknown>>();
  const updateOf = (differs: string) => {
    const sets = names.filter((_, index) => differs[index] === '1').map((name) => `${name} = ?`);
    const fresh = db.prepare<unknown[], unknown>(`UPDATE ${table} SET ${sets.join(', ')} WHERE "id" = ?`);
    updates.set(differs, fresh);
    return fresh;
  };
  return (id: Id, values: readonly SqlValue[]): boolean => {
    select ??= db.prepare<[Id], SqlValue[]>(`SELECT ${names.join(', ')} FROM ${table} WHERE "id" = ?`).raw();
    const stored = select.get(id);
    if (stored === undefined) return false;
    const fresh: SqlValue[] = [];
    let differs = '';
    for (let index = 0; index < values.length; index += 1) {
      const value = values[index] as SqlValue;
      if (value === stored[index]) differs += '0';
      else {
        differs += '1';
        fresh.push(value);
      }
    }
    if (fresh.length === 0) return true;
    fresh.push(id);
    (updates.get(differs) ?? updateOf(differs)).run(fresh);
    return true;
  };
}

interface NamedColumn<Row> {
  readonly field: keyof Row & string;
  readonly sql: string;
  readonly write: ((value: unknown) => SqlValue) | null;
  readonly read: ((stored: SqlValue) => unknown) | null;
}

const storedForm = <Row>({ field, write }: NamedColumn<Row>, row: Partial<Row>): SqlValue =>
  write === null ? (row[field] as SqlValue) : write(row[field]);

const quote = (name: string): string => `"${name}"`;

function columnList<Row>({ columns }: TableShape<Row>): readonly NamedColumn<Row>[] {
  return Object.entries(columns).map(
    ([field, column]) => ({ ...(column as Column<unknown>), field }) as NamedColumn<Row>,
  );
}

/** Fields named with null are looked up as `IS NULL`, so that partial indexes serve them. */
function conditionOf<Row>(columns: readonly NamedColumn<Row>[], match: Partial<Row>, table: string) {
  const values: SqlValue[] = [];
  const terms = Object.keys(match).map((field) => {
    const column = columns.find((candidate) => candidate.field === field);
    const value = match[field as keyof Row];
    if (column === undefined || value === undefined) throw new Error(`${table}: nothing to match in field ${field}.`);
    if (value === null) return `${quote(column.sql)} IS NULL`;
    values.push(storedForm(column, match));
    return `${quote(column.sql)} = ?`;
  });
  return { condition: terms.length === 0 ? '' : ` WHERE ${terms.join(' AND ')}`, values };
}

/** The question for the different values of a field, and how its rows are read. */
function distinctOf<Row>(columns: readonly NamedColumn<Row>[], field: keyof Row & string, table: string) {
  const column = columns.find((candidate) => candidate.field === field);
  if (column === undefined) throw new Error(`${table}: no field ${field}.`);
  const { read } = column;
  return {
    sql: `SELECT DISTINCT ${quote(column.sql)} AS value FROM ${quote(table)} ORDER BY value`,
    values: (rows: readonly unknown[]) =>
      rows.map((row) => {
        const { value } = row as { readonly value: SqlValue };
        return read ? read(value) : value;
      }),
  };
}

/** Columns whose stored form differs are turned back; all others already carry the record's own names and values. */
function recordReader<Row>(columns: readonly NamedColumn<Row>[]): (stored: unknown) => Row {
  const turned = columns.filter(({ read }) => read !== null);
  if (turned.length === 0) return (stored) => stored as Row;
  return (stored) => {
    const record = stored as Record<string, unknown>;
    for (const { field, read } of turned) record[field] = read?.(record[field] as SqlValue);
    return record as Row;
  };
}

function statementCache(db: BetterSqlite3.Database) {
  const prepared = new Map<string, BetterSqlite3.Statement<unknown[], unknown>>();
  return (sql: string) => {
    const known = prepared.get(sql);
    if (known !== undefined) return known;
    const fresh = db.prepare<unknown[], unknown>(sql);
    prepared.set(sql, fresh);
    return fresh;
  };
}
