import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import writeXlsxFile from 'write-excel-file/node';
import { hasCalendar } from '../../main/operations/batch-calendar.ts';
import { importTable } from '../../main/operations/files/import-table.ts';
import { importWorkbook } from '../../main/operations/files/import-workbook.ts';
import { WHOLE_KEYS, wholeWorkbook } from '../../main/operations/files/whole-workbook.ts';
import type { Desk } from '../../main/operations/operation.ts';
import { contentDigest } from '../../main/workbook/content-digest.ts';
import { startKeeper } from '../../main/workbook/keeper.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { unpackMoved } from '../../main/workbook/moving.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { WHOLE_TABLES } from '../../shared/contract/whole-workbook.ts';
import { ok, type Result } from '../../shared/kernel/result.ts';
import { aDesk, MIGRATIONS_FOLDER, mustOk } from '../builders/desk.ts';
import { aTableChoice, handed } from '../builders/handed-table.ts';
import { aDeskWithBoxes } from '../builders/running-batch.ts';
import type { FaultReport } from './fault-report.ts';
import { harmed, harmedJson, seededNumbers } from './fuzz.ts';

/** What a path of taking in did with one harmed file. */
type Outcome = 'taken in' | 'declined' | 'threw' | 'half written' | 'unfit rows' | 'reached into objects';
const HARM: readonly Outcome[] = ['threw', 'half written', 'unfit rows', 'reached into objects'];

type TakeIn = (bytes: Uint8Array) => Promise<Outcome>;

/**
 * Files that were harmed at random are handed to every way of taking a file in. Each must be declined in words, leaving
 * the workbook as it was, or taken in whole, leaving rows that fit their schema.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const inputs = short ? 150 : 10_000;
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-import-'));
  try {
    const reports = [
      await fuzzed('a text table', inputs, new TextEncoder().encode(TABLE), tableIn),
      await fuzzed('a spreadsheet', inputs, await spreadsheet(), tableIn),
      await fuzzed('a file of everything', inputs, everything(), wholeIn),
      await fuzzed('a file of everything with other values', inputs, everything(), wholeIn, harmedJson),
      await fuzzed('a package', inputs, aPackage(folder), packageIn(folder)),
    ];
    return [...reports, await control(inputs)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Harm = typeof harmed;

async function counted(
  inputs: number,
  seed: Uint8Array,
  takeIn: TakeIn,
  harm: Harm,
): Promise<ReadonlyMap<Outcome, number>> {
  const number = seededNumbers(20_260_601);
  const counts = new Map<Outcome, number>();
  for (let input = 0; input < inputs; input += 1) {
    const outcome = await takeIn(harm(seed, number));
    counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  }
  return counts;
}

async function fuzzed(
  what: string,
  inputs: number,
  seed: Uint8Array,
  takeIn: TakeIn,
  harm: Harm = harmed,
): Promise<FaultReport> {
  const unharmed = await takeIn(seed);
  const counts = await counted(inputs, seed, takeIn, harm);
  const bad = HARM.filter((outcome) => counts.has(outcome));
  return {
    harness: `harmed files: ${what}`,
    outcome: bad.length === 0 && unharmed === 'taken in' && (counts.get('declined') ?? 0) > 0 ? 'passed' : 'failed',
    figures: [
      `import ${what}: ${inputs} harmed files, ${[...counts].map(([outcome, n]) => `${n} ${outcome}`).join(', ')}`,
    ],
  };
}

/** The control: a way in that believes what it reads must be noticed. */
async function control(inputs: number): Promise<FaultReport> {
  const believing = onDesks(aDesk, async (desk, bytes) => {
    const { tables } = JSON.parse(new TextDecoder().decode(bytes));
    return desk.workbook.change({ did: 'other' }, (written) => {
      for (const key of WHOLE_KEYS) for (const row of tables[key]) written[key].insert(row as never);
      return ok(null);
    });
  });
  const counts = await counted(inputs, everything(), believing, harmedJson);
  const noticed = HARM.reduce((sum, outcome) => sum + (counts.get(outcome) ?? 0), 0);
  return {
    harness: 'harmed files control: a way in that believes what it reads must be noticed',
    outcome: noticed > inputs / 50 ? 'passed' : 'failed',
    figures: [`import control noticed ${noticed} of ${inputs}`],
  };
}

const TABLE = `number;born in;breeder;first eggs;in hive;sold to;note
24-001;2024;H03;14.5.2024;;Maria;"first line
second; line"
24-002;2024;;;H12;;'=1+1
24-003;2023;H03;2.6.2023;;;Žofie
`;

const spreadsheet = (): Promise<Uint8Array> =>
  writeXlsxFile([
    ['number', 'born in', 'first eggs', 'note'],
    ['24-001', 2024, { value: new Date(Date.UTC(2024, 4, 14)), type: Date, format: 'dd/mm/yyyy' }, 'a'],
    ['24-002', 2024, null, 'b'],
  ]).toBuffer();

const everything = (): Uint8Array => new TextEncoder().encode(JSON.stringify(wholeWorkbook(aDeskWithBoxes())));

const tableIn: TakeIn = onDesks(aDeskWithBoxes, (desk, bytes) =>
  importTable(desk, aTableChoice(bytes, { kind: 'queens', leaveOut: true, dayOrder: 'day-first' })),
);

const wholeIn: TakeIn = onDesks(aDesk, async (desk, bytes) => importWorkbook(desk, { file: handed(bytes) }));

/** A workbook that declined a file is as it was, so the next file is handed to it too; after any other outcome a new one. */
function onDesks(make: () => Desk, work: (desk: Desk, bytes: Uint8Array) => Promise<Result<unknown, Refusal>>): TakeIn {
  let desk: Desk | null = null;
  return async (bytes) => {
    desk ??= make();
    const outcome = await outcomeOn(desk, (on) => work(on, bytes));
    if (outcome !== 'declined') {
      desk.workbook.close();
      desk = null;
    }
    return outcome;
  };
}

async function outcomeOn(desk: Desk, work: (desk: Desk) => Promise<Result<unknown, Refusal>>): Promise<Outcome> {
  const before = desk.workbook.changeNumber;
  try {
    const result = await work(desk);
    if (Reflect.ownKeys(Object.prototype).length !== OWN_PARTS) return 'reached into objects';
    if (!result.ok) return desk.workbook.changeNumber === before ? 'declined' : 'half written';
    return rowsFit(desk) ? 'taken in' : 'unfit rows';
  } catch {
    return 'threw';
  }
}
const OWN_PARTS = Reflect.ownKeys(Object.prototype).length;

const rowsFit = ({ workbook: { tables } }: Desk): boolean =>
  WHOLE_KEYS.every((key) => tables[key].all().every((row) => WHOLE_TABLES[key].safeParse(row).success)) &&
  tables.batches.all().every((batch) => hasCalendar(tables, batch));

/** A package of a workbook with rows in it. */
function aPackage(folder: string): Uint8Array {
  const keeper = startKeeper({
    documents: folder,
    programData: join(folder, 'program'),
    migrations: readMigrations(MIGRATIONS_FOLDER),
    now: () => '2026-06-01T12:00:00.000Z',
    report: (error) => {
      throw error;
    },
  });
  try {
    mustOk(keeper.begin('Queens', folder));
    const desk = { ...aDesk(), workbook: keeper.current ?? aDesk().workbook };
    mustOk(importWorkbook(desk, { file: handed(everything()) }));
    return Uint8Array.from(readFileSync(mustOk(keeper.pack(folder)).file));
  } finally {
    keeper.stop();
  }
}

/** Taken in means: the very workbook that was packed. Declined means: not one file is left behind. */
function packageIn(folder: string): TakeIn {
  const documents = join(folder, 'there');
  const places = { documents, safetyFolder: join(folder, 'copies'), programData: join(folder, 'passing') };
  let digest: string | null = null;
  return async (bytes) => {
    const file = join(folder, 'moved.zip');
    writeFileSync(file, bytes);
    mkdirSync(documents, { recursive: true });
    try {
      const opened = unpackMoved(file, places);
      const left = readdirSync(places.programData).length;
      if (!opened.ok) return left === 0 && readdirSync(documents).length === 0 ? 'declined' : 'half written';
      const own = digestOf(opened.value);
      digest ??= own;
      return own === digest && left === 0 ? 'taken in' : 'unfit rows';
    } catch {
      return 'threw';
    } finally {
      rmSync(documents, { recursive: true, force: true });
    }
  };
}

function digestOf(file: string): string {
  const db = new Database(file, { readonly: true });
  try {
    return contentDigest(db);
  } finally {
    db.close();
  }
}
