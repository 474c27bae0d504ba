import { spawn } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { FaultReport } from './fault-report.ts';

const CHILD = fileURLToPath(new URL('./kill-child.ts', import.meta.url));
const MIGRATIONS = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));
/** The same file is killed this often before a fresh one takes its place, so that recoveries build on recoveries. */
const KILLS_PER_FILE = 10;
/** Milliseconds after the first acknowledgement within which the kill falls. */
const KILL_WITHIN = 90;
const CONTROL_KILLS = 5;

interface Tally {
  kills: number;
  insideTransaction: number;
  acknowledged: number;
  lost: number;
  partial: number;
  corrupt: number;
  unopened: number;
}

/** A process that saves without pause is killed at a random moment; nothing it acknowledged may be missing. */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const wanted = short ? 40 : 1000;
  const honest = await killLoop(wanted, 'honest');
  const boasting = await killLoop(CONTROL_KILLS, 'boasting');
  const bad = honest.lost + honest.partial + honest.corrupt + honest.unopened;
  const aimed = honest.insideTransaction >= wanted / 2;
  return [
    {
      harness: 'kill -9 in mid-save',
      outcome: bad === 0 && aimed ? 'passed' : 'failed',
      figures: Object.entries(honest).map(([what, times]) => `kill ${what} ${times}`),
    },
    {
      harness: 'kill -9 control: acknowledged too early, must lose',
      outcome: boasting.lost > 0 ? 'passed' : 'failed',
      figures: [`kill control lost ${boasting.lost} of ${boasting.acknowledged}`],
    },
  ];
}

async function killLoop(kills: number, manner: 'honest' | 'boasting'): Promise<Tally> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-kill-'));
  const setting: OpenSetting = {
    migrations: readMigrations(MIGRATIONS),
    safetyFolder: join(folder, 'safety'),
    now: () => new Date().toISOString(),
  };
  const tally: Tally = {
    kills: 0,
    insideTransaction: 0,
    acknowledged: 0,
    lost: 0,
    partial: 0,
    corrupt: 0,
    unopened: 0,
  };
  try {
    const blank = join(folder, 'blank.ripecell');
    const created = createWorkbookFile({ file: blank, name: 'Kill', kind: 'real' }, setting);
    if (!created.ok) throw new Error(created.refusal.kind);
    created.value.close();
    let file = '';
    for (let kill = 0; kill < kills; kill += 1) {
      if (kill % KILLS_PER_FILE === 0) {
        file = join(folder, `${manner}-${kill}.ripecell`);
        copyFileSync(blank, file);
      }
      const lines = await killOnce(file, setting.safetyFolder, manner);
      takeStock(tally, lines, file, setting);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return tally;
}

/** Starts a saving process, kills it, and returns what it had said by then. */
function killOnce(file: string, safetyFolder: string, manner: string): Promise<readonly string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [CHILD, file, MIGRATIONS, safetyFolder, manner], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    let complaint = '';
    let aimed = false;
    child.stderr.on('data', (chunk: Buffer) => {
      complaint += chunk.toString();
    });
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (aimed) return;
      aimed = true;
      setTimeout(() => child.kill('SIGKILL'), Math.random() * KILL_WITHIN);
    });
    child.on('error', reject);
    child.on('close', (_code, signal) => {
      if (signal === 'SIGKILL') resolve(said.split('\n').filter((line) => line !== ''));
      else reject(new Error(`The saving process ended by itself: ${complaint}`));
    });
  });
}

function takeStock(tally: Tally, lines: readonly string[], file: string, setting: OpenSetting): void {
  const acknowledged = lines.flatMap((line) => (line.startsWith('A ') ? [Number(line.slice(2))] : []));
  const lastBegun = lines.findLast((line) => line.startsWith('B '))?.slice(2);
  tally.kills += 1;
  tally.acknowledged += acknowledged.length;
  if (lastBegun !== undefined && !acknowledged.includes(Number(lastBegun))) tally.insideTransaction += 1;
  const opened = openWorkbookFile(file, setting);
  if (!opened.ok) {
    tally.unopened += 1;
    return;
  }
  const { tables } = opened.value;
  const barsOf = new Map<string, number>();
  for (const { batchId } of tables.bars.all()) barsOf.set(batchId, (barsOf.get(batchId) ?? 0) + 1);
  const batches = tables.batches.all();
  const present = new Set(batches.map(({ id }) => id));
  tally.lost += acknowledged.filter((change) => !present.has(`batch-${change}`)).length;
  tally.partial += batches.filter(({ id, cellsPlanned }) => barsOf.get(id) !== cellsPlanned).length;
  const total = [...barsOf.values()].reduce((sum, bars) => sum + bars, 0);
  if (Number(tables.settings.get('total') ?? 0) !== total) tally.partial += 1;
  opened.value.close();
  if (!isSound(file)) tally.corrupt += 1;
}

function isSound(file: string): boolean {
  const db = new Database(file, { readonly: true });
  const sound = db.pragma('integrity_check', { simple: true }) === 'ok';
  const broken = db.pragma('foreign_key_check');
  db.close();
  return sound && Array.isArray(broken) && broken.length === 0;
}
