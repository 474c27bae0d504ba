import fc from 'fast-check';
import { hasCalendar } from '../../main/operations/batch-calendar.ts';
import { keepTally } from '../../main/operations/tally-keeping.ts';
import type { Table, Tables } from '../../main/workbook/workbook.ts';
import type { Batch } from '../../shared/model/batch.ts';
import { RECORDS } from './any-records.ts';
import { aBatch } from './batch.ts';

type Key = keyof typeof RECORDS;
type Row = { readonly id: string } & Readonly<Record<string, unknown>>;
const KEYS = Object.keys(RECORDS) as readonly Key[];

const POINTERS: Readonly<Record<string, Key>> = {
  yardId: 'yards',
  colonyId: 'colonies',
  breederId: 'colonies',
  builderId: 'colonies',
  methodCopyId: 'methodCopies',
  batchId: 'batches',
  barId: 'bars',
  boxId: 'boxes',
  placementId: 'placements',
  queenId: 'queens',
  motherId: 'queens',
  fromYardId: 'yards',
  toYardId: 'yards',
};
/** Filled when there is a row to point to, else null. */
const MAY_BE_NULL = new Set([
  'yardId',
  'breederId',
  'builderId',
  'methodCopyId',
  'motherId',
  'fromYardId',
  'toYardId',
  'queens.batchId',
  'placements.barId',
]);

/**
 * A function that fills an empty workbook with random rows of every table, each pointing to random rows that are there;
 * rows that would break a rule of the file are left out.
 */
export const anyWorkbook: fc.Arbitrary<(tables: Tables) => void> = fc
  .tuple(
    fc.record(
      Object.fromEntries(KEYS.map((key) => [key, fc.array(RECORDS[key][1] as fc.Arbitrary<Row>, { maxLength: 6 })])),
    ),
    fc.infiniteStream(fc.nat(1000)),
    fc.dictionary(
      fc.stringMatching(/^[a-z][A-Za-z]{2,12}$/),
      // A value is read back without the names that would reach into every object; the program never writes them.
      fc
        .jsonValue({ noUnicodeString: false })
        .filter((value) => !/"(__proto__|constructor|prototype)":/.test(JSON.stringify(value))),
      { maxKeys: 5 },
    ),
  )
  .map(([rows, chance, settings]) => (tables) => {
    const next = () => Number(chance.next().value);
    for (const key of KEYS)
      for (const row of rows[key] ?? []) insertIfAllowed(tables, key, pointed(tables, key, row, next));
    for (const batch of tables.batches.all()) makeReckonable(tables, batch);
    for (const { id } of tables.batches.all()) keepTally(tables, id);
    for (const [key, value] of Object.entries(settings))
      if (!/^(workbook|lastChange|builtBy|heldAt)/.test(key))
        tables.settings.put(key, JSON.parse(JSON.stringify(value)));
  });

function pointed(tables: Tables, key: Key, row: Row, next: () => number): Row | null {
  const changes = Object.keys(row).flatMap((field) => {
    // What was given out is remembered also of batches that are gone.
    const target = key === 'calendarExports' ? undefined : POINTERS[field];
    if (!target) return [];
    const there = (tables[target] as Table<Row>).all();
    const chosen = there.length === 0 ? null : (there[next() % there.length]?.id ?? null);
    return [[field, chosen] as const];
  });
  const impossible = changes.some(
    ([field, id]) =>
      id === null && row[field] !== null && !MAY_BE_NULL.has(field) && !MAY_BE_NULL.has(`${key}.${field}`),
  );
  return impossible ? null : { ...row, ...Object.fromEntries(changes) };
}

function insertIfAllowed(tables: Tables, key: Key, row: Row | null): void {
  if (row === null) return;
  const table = tables[key] as unknown as Table<Row>;
  try {
    table.insert(row);
  } catch (error) {
    if (error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_CONSTRAINT')) return;
    throw error;
  }
  if (key === 'counts' && removedMoreThanTaken(tables, String(row.barId))) table.remove(row.id);
}

/** The operations decline a batch whose days cannot be reckoned, so no workbook has one. */
function makeReckonable(tables: Tables, batch: Batch): void {
  if (hasCalendar(tables, batch)) return;
  const { id, code, season, breederId, builderId, note, lesson } = batch;
  tables.batches.update(aBatch({ id, code, season, breederId, builderId, note, lesson }));
}

/** The operations decline such counts, so no workbook has them. */
function removedMoreThanTaken({ counts }: Tables, barId: string): boolean {
  const cells = (stage: 'taken' | 'removed') => counts.where({ barId, stage })[0]?.cells ?? 0;
  return cells('removed') > cells('taken');
}
