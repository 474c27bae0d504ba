import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { APPLICATION_ID } from '../../main/workbook/file-marks.ts';
import { latestVersion } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import type { FaultReport } from './fault-report.ts';
import { aFullWorkbook, settingIn } from './sample-workbook.ts';

/** Files that are no workbooks, workbooks of newer programs, and workbooks where nothing can be written: no byte changes. */
export function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-foreign-'));
  try {
    const setting = settingIn(folder);
    const workbook = aFullWorkbook(folder, setting);
    const yards = workbook.tables.yards.all().length;
    workbook.close();
    const scene = { folder, setting, file: workbook.file, yards };
    return Promise.resolve([
      foreignReport(scene),
      newerReport(scene, short ? 30 : 1000),
      readOnlyReport(scene),
      controlReport(scene),
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Scene {
  readonly folder: string;
  readonly setting: OpenSetting;
  readonly file: string;
  readonly yards: number;
}

function foreignReport({ folder, setting }: Scene): FaultReport {
  const place = join(folder, 'foreign');
  let refused = 0;
  let changed = 0;
  const makers = foreignFiles();
  for (const make of makers) {
    mkdirSync(place);
    const file = join(place, 'foreign.ripecell');
    make(file);
    const before = picture(place);
    const opened = openWorkbookFile(file, setting);
    if (opened.ok) opened.value.close();
    else if (opened.refusal.kind === 'not-a-workbook') refused += 1;
    if (picture(place) !== before) changed += 1;
    rmSync(place, { recursive: true });
  }
  return {
    harness: 'not a workbook',
    outcome: refused === makers.length && changed === 0 ? 'passed' : 'failed',
    figures: [`foreign files ${makers.length}`, `foreign refused ${refused}`, `foreign changed ${changed}`],
  };
}

function newerReport({ folder, setting, file, yards }: Scene, versions: number): FaultReport {
  const place = join(folder, 'newer');
  mkdirSync(place);
  const newer = join(place, 'w.ripecell');
  copyFileSync(file, newer);
  let shown = 0;
  let changed = 0;
  for (let ahead = 1; ahead <= versions; ahead += 1) {
    setVersion(newer, latestVersion(setting.migrations) + ahead);
    const before = picture(place);
    const opened = openWorkbookFile(newer, setting);
    if (opened.ok) {
      const refused = opened.value.change({ did: 'other' }, ({ settings }) => ok(settings.put('x', 1)));
      if (opened.value.tables.yards.all().length === yards && !refused.ok) shown += 1;
      opened.value.close();
    }
    if (picture(place) !== before) changed += 1;
  }
  return {
    harness: 'a newer version’s workbook',
    outcome: shown === versions && changed === 0 ? 'passed' : 'failed',
    figures: [`newer versions ${versions}`, `newer shown for reading ${shown}`, `newer changed ${changed}`],
  };
}

/** Three ways in which a file comes to lie on a drive that cannot be written; `chmod` is no test for root, a mount is. */
function readOnlyReport({ folder, setting, file, yards }: Scene): FaultReport {
  const harness = 'a drive that cannot be written';
  const drive = join(folder, 'drive');
  mkdirSync(drive);
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=40m', 'tmpfs', drive]).status !== 0) {
    return { harness, outcome: 'skipped', figures: ['read-only skipped: a drive cannot be mounted here'] };
  }
  try {
    copyFileSync(file, join(drive, 'closed.ripecell'));
    copyFileSync(file, join(drive, 'log-mode.ripecell'));
    inLogMode(join(drive, 'log-mode.ripecell'));
    cutOffWithLog(file, join(drive, 'cut-off.ripecell'));
    cutOffWithLog(oldFormat(folder, setting), join(drive, 'older.ripecell'));
    const before = picture(drive);
    spawnSync('mount', ['-o', 'remount,ro', drive]);
    const answers = ['closed', 'log-mode', 'cut-off', 'older'].map((name) => {
      const opened = openWorkbookFile(join(drive, `${name}.ripecell`), setting);
      if (!opened.ok) return `${name} ${opened.refusal.kind}`;
      const rows = opened.value.tables.yards.all().length;
      opened.value.close();
      const expected = name === 'closed' || name === 'log-mode' ? yards : name === 'cut-off' ? yards + 1 : 1;
      return opened.value.readOnly && rows === expected ? 'shown' : `${name} ${rows} of ${expected} yards`;
    });
    const shown = answers.filter((answer) => answer === 'shown').length;
    const isGood = shown === answers.length && picture(drive) === before;
    return {
      harness,
      outcome: isGood ? 'passed' : 'failed',
      figures: [`read-only shown ${shown} of ${answers.length}`, ...answers.filter((answer) => answer !== 'shown')],
    };
  } finally {
    spawnSync('umount', [drive]);
  }
}

/** The picture must notice a single byte and a new file, or nothing above is worth anything. */
function controlReport({ folder }: Scene): FaultReport {
  const place = join(folder, 'control');
  mkdirSync(place);
  writeFileSync(join(place, 'a'), 'honey');
  const before = picture(place);
  writeFileSync(join(place, 'a'), 'hon3y');
  const seesByte = picture(place) !== before;
  writeFileSync(join(place, 'a'), 'honey');
  writeFileSync(join(place, 'a-wal'), '');
  const seesFile = picture(place) !== before;
  return {
    harness: 'foreign files control: a changed byte and a new file must be noticed',
    outcome: seesByte && seesFile ? 'passed' : 'failed',
    figures: [`foreign control noticed ${[seesByte, seesFile].filter(Boolean).length} of 2`],
  };
}

/** Names and contents of a folder in one text. */
function picture(folder: string): string {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => {
      const file = join(folder, name);
      return statSync(file).isFile()
        ? `${name} ${createHash('sha256').update(readFileSync(file)).digest('hex')}`
        : name;
    })
    .join('\n');
}

function setVersion(file: string, version: number): void {
  const db = new Database(file);
  db.pragma(`user_version = ${version}`);
  db.close();
}

function inLogMode(file: string): void {
  const db = new Database(file);
  db.pragma('journal_mode = WAL');
  db.close();
}

/** What a power cut leaves: the last row is in the log only. */
function cutOffWithLog(from: string, to: string): void {
  const live = `${from}.live`;
  copyFileSync(from, live);
  const db = new Database(live);
  db.pragma('journal_mode = WAL');
  db.exec("INSERT INTO yard VALUES ('cut-off', 'Cut off', NULL)");
  copyFileSync(live, to);
  copyFileSync(`${live}-wal`, `${to}-wal`);
  db.close();
  rmSync(live);
}

function oldFormat(folder: string, { migrations }: OpenSetting): string {
  const file = join(folder, 'old.ripecell');
  const db = new Database(file);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  db.exec(migrations[0]?.sql() ?? '');
  db.pragma('user_version = 1');
  db.close();
  chmodSync(file, 0o600);
  return file;
}

function foreignFiles(): readonly ((file: string) => void)[] {
  const header = Buffer.from('SQLite format 3\0');
  const bytes = (content: string | Buffer) => (file: string) => writeFileSync(file, content);
  const sqlite = (set: (db: Database.Database) => unknown) => (file: string) => {
    const db = new Database(file);
    set(db);
    db.close();
  };
  return [
    bytes(''),
    bytes('x'),
    bytes('season 2026\n'),
    bytes('bees and honey\n'.repeat(5000)),
    bytes('batch;given;taken\n26-01;20;17\n'),
    bytes('{"batches": []}'),
    bytes(Buffer.alloc(4096)),
    bytes(Buffer.from(Array.from({ length: 4096 }, (_, i) => (i * 7919) % 251))),
    bytes(Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex')),
    bytes(Buffer.from('504b030414000000080000002100', 'hex')),
    bytes('%PDF-1.7\n%âã\n1 0 obj\n'),
    bytes(header),
    bytes(Buffer.concat([header, Buffer.from('honey '.repeat(900))])),
    bytes(Buffer.concat([Buffer.from('RIFF'), Buffer.alloc(600, 1)])),
    sqlite((db) => db.exec('CREATE TABLE note (text)')),
    sqlite((db) => {
      db.pragma('application_id = 252006');
      db.pragma('user_version = 2');
      db.exec('CREATE TABLE batch (id)');
    }),
    sqlite((db) => {
      db.pragma('journal_mode = WAL');
      db.exec('CREATE TABLE batch (id)');
    }),
    sqlite((db) => db.pragma(`application_id = ${APPLICATION_ID}`)),
    sqlite((db) => {
      for (let i = 0; i < 40; i += 1) db.exec(`CREATE TABLE t${i} (a, b, c)`);
    }),
    (file) => mkdirSync(file),
  ];
}
