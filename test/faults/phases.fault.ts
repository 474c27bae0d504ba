import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { APPLICATION_ID } from '../../main/workbook/file-marks.ts';
import { startKeeper } from '../../main/workbook/keeper.ts';
import { migrate, readMigrations } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { makeSafetyCopy, removeUnfinishedCopies } from '../../main/workbook/safety-copy.ts';
import type { FaultReport } from './fault-report.ts';

const CHILD = fileURLToPath(new URL('./phase-child.ts', import.meta.url));
const MIGRATIONS = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));
const ALL = readMigrations(MIGRATIONS);
/** Enough rows that copying and checking them takes long enough to be hit. */
const ROWS = 4000;
const EARLIER_ROWS = 2000;
const IMPORTED_ROWS = 4000;
const FILE = 'w.ripecell';
const SAFETY = join('program', 'safety-copies');

const PHASES = ['create', 'upgrade', 'close', 'copy', 'import', 'restore'] as const;
type Phase = (typeof PHASES)[number];

interface Tally {
  kills: number;
  inside: number;
  old: number;
  whole: number;
  bad: number;
}

/**
 * Beginning a workbook, bringing an old one up to date, closing one, making a safety copy, taking in a table, and going
 * back to a copy, each killed at a random moment.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const kills = short ? 5 : 50;
  const reports: FaultReport[] = [];
  for (const phase of PHASES) {
    const tally = await killPhase(phase, kills);
    reports.push({
      harness: `kill -9 in the phase "${phase}"`,
      outcome: tally.bad === 0 && tally.inside > 0 ? 'passed' : 'failed',
      figures: Object.entries(tally).map(([what, times]) => `phase ${phase} ${what} ${times}`),
    });
  }
  reports.push(controlReport());
  return reports;
}

async function killPhase(phase: Phase, kills: number): Promise<Tally> {
  const tally: Tally = { kills: 0, inside: 0, old: 0, whole: 0, bad: 0 };
  const before = mkdtempSync(join(tmpdir(), 'ripecell-phase-'));
  if (phase !== 'create') anOldWorkbook(join(before, FILE), phase === 'upgrade' ? 1 : ALL.length);
  // The shortest time the phase has taken here. The first run is not killed, it shows how long; a busy machine may have
  // slowed it, so a later run that was through before its kill is taken at its word.
  let usual = Number.POSITIVE_INFINITY;
  for (let kill = 0; kill <= kills; kill += 1) {
    const folder = mkdtempSync(join(tmpdir(), 'ripecell-phase-'));
    try {
      cpSync(before, folder, { recursive: true });
      // A copy knows which file it is of.
      if (phase === 'restore') aCopyOfEarlier(join(folder, FILE), join(folder, SAFETY));
      // A random moment of each part of the phase in its turn.
      const killAfter = kill === 0 ? null : (usual * (kill - Math.random())) / kills;
      const run = await runPhase([phase, join(folder, FILE), MIGRATIONS, join(folder, SAFETY)], killAfter);
      if (run.ended) usual = Math.min(usual, run.milliseconds);
      if (kill === 0) continue;
      tally.kills += 1;
      if (!run.ended) tally.inside += 1;
      tally[judge(phase, join(folder, FILE), join(folder, SAFETY))] += 1;
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
  rmSync(before, { recursive: true, force: true });
  return tally;
}

function runPhase(
  args: readonly string[],
  killAfter: number | null,
): Promise<{ ended: boolean; milliseconds: number }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [CHILD, ...args], { stdio: ['ignore', 'pipe', 'inherit'] });
    let said = '';
    let startedAt = 0;
    let milliseconds = 0;
    child.stdout.on('data', (chunk: Buffer) => {
      const before = said;
      said += chunk.toString();
      if (!before.includes('S') && said.includes('S')) {
        startedAt = performance.now();
        if (killAfter !== null) setTimeout(() => child.kill('SIGKILL'), killAfter);
      }
      if (said.includes('E')) {
        milliseconds = performance.now() - startedAt;
        if (killAfter === null) child.kill('SIGKILL');
      }
    });
    child.on('error', reject);
    child.on('close', (code, signal) => {
      if (signal === 'SIGKILL') resolve({ ended: said.includes('E'), milliseconds });
      else reject(new Error(`The phase ${args[0]} ended by itself with ${code}.`));
    });
  });
}

/** Every finished copy holds all rows; a phase may be cut off before one was finished. */
function copiesAreWhole(safety: string, rows: number, least: number): boolean {
  const names = existsSync(safety) ? readdirSync(safety) : [];
  const copies = names.filter((name) => name.endsWith('.ripecell'));
  const leftovers = names.filter((name) => name.includes('.part'));
  return (
    copies.length >= least && leftovers.length === 0 && copies.every((name) => rowsIn(join(safety, name)) === rows)
  );
}

/** A copy with half the rows, made before the other half was typed. */
function aCopyOfEarlier(file: string, safety: string): void {
  const db = new Database(file);
  db.exec(`DELETE FROM yard WHERE rowid > ${EARLIER_ROWS}`);
  makeSafetyCopy(db, safety, 'by-hand', '2026-06-01T18:00:00.000Z');
  const insert = db.prepare('INSERT INTO yard VALUES (?, ?, ?)');
  db.transaction(() => {
    for (let row = EARLIER_ROWS + 1; row <= ROWS; row += 1) insert.run(`y${row}`, `Yard ${row}`, 'x'.repeat(100));
  })();
  db.close();
}

/** Going back ended before or after: one of the two states lies under the name, and neither is gone. */
function judgeRestore(file: string, safety: string): 'old' | 'whole' | 'bad' {
  const keeper = startKeeper({
    documents: dirname(file),
    programData: dirname(safety),
    migrations: ALL,
    now: () => new Date().toISOString(),
    report: (error) => {
      throw error;
    },
  });
  const opened = keeper.open(file);
  const rows = opened.ok ? opened.value.tables.yards.all().length : null;
  keeper.stop();
  const beside = readdirSync(dirname(file)).filter((name) => name.includes(' until ') && name.endsWith('.ripecell'));
  if (existsSync(`${file}.new`) && rows !== ROWS) return 'bad';
  if (rows === ROWS) return 'old';
  const isKept = beside.length === 1 && rowsIn(join(dirname(file), beside[0] ?? '')) === ROWS;
  return rows === EARLIER_ROWS && isKept ? 'whole' : 'bad';
}

/** After a kill: is everything as before, or as it should be, and nothing between? */
function judge(phase: Phase, file: string, safety: string): 'old' | 'whole' | 'bad' {
  if (phase === 'restore') return judgeRestore(file, safety);
  if (!existsSync(file)) return phase === 'create' ? 'old' : 'bad';
  const wasOld = phase === 'upgrade' && versionIn(file) < ALL.length;
  const setting: OpenSetting = { migrations: ALL, safetyFolder: safety, now: () => new Date().toISOString() };
  removeUnfinishedCopies(safety);
  const opened = openWorkbookFile(file, setting);
  if (!opened.ok) return 'bad';
  const yards = opened.value.tables.yards.all();
  opened.value.close();
  if (phase === 'create') return yards.length === 0 ? 'whole' : 'bad';
  if (phase === 'close') return yards.length === ROWS + 1 && yards.at(-1)?.id === 'last' ? 'whole' : 'bad';
  if (phase === 'copy') {
    if (yards.length !== ROWS || !copiesAreWhole(safety, ROWS, 0)) return 'bad';
    return copiesAreWhole(safety, ROWS, 1) ? 'whole' : 'old';
  }
  if (phase === 'import') {
    const isWhole = yards.length === ROWS + IMPORTED_ROWS;
    if (!isWhole && yards.length !== ROWS) return 'bad';
    if (!copiesAreWhole(safety, ROWS, isWhole ? 1 : 0)) return 'bad';
    return isWhole ? 'whole' : 'old';
  }
  if (yards.length !== ROWS || !copiesAreWhole(safety, ROWS, 1)) return 'bad';
  return wasOld ? 'old' : 'whole';
}

/** The judge must call a half file bad: an upgrade without its rows, a close without the last entry. */
function controlReport(): FaultReport {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-phase-'));
  const file = join(folder, 'w.ripecell');
  anOldWorkbook(file, ALL.length);
  const db = new Database(file);
  db.exec("DELETE FROM yard WHERE id = 'y1'");
  db.close();
  const verdicts = [judge('close', file, join(folder, 'safety')), judge('upgrade', file, join(folder, 'safety'))];
  rmSync(folder, { recursive: true, force: true });
  return {
    harness: 'kill -9 in a phase control: half files must be called bad',
    outcome: verdicts.every((verdict) => verdict === 'bad') ? 'passed' : 'failed',
    figures: [
      `phase control called bad ${verdicts.filter((verdict) => verdict === 'bad').length} of ${verdicts.length}`,
    ],
  };
}

function anOldWorkbook(file: string, version: number): void {
  const db = new Database(file);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  migrate(db, ALL.slice(0, version));
  const insert = db.prepare('INSERT INTO yard VALUES (?, ?, ?)');
  db.transaction(() => {
    for (let row = 1; row <= ROWS; row += 1) insert.run(`y${row}`, `Yard ${row}`, 'x'.repeat(100));
  })();
  db.close();
}

function versionIn(file: string): number {
  const db = new Database(file);
  const version = Number(db.pragma('user_version', { simple: true }));
  db.close();
  return version;
}

function rowsIn(file: string): number {
  const db = new Database(file, { readonly: true });
  const rows = Number(db.prepare('SELECT count(*) FROM yard').pluck().get());
  db.close();
  return rows;
}
