import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { soundnessOfFile } from '../../main/workbook/safety-copy.ts';
import type { FaultReport } from './fault-report.ts';
import { settingIn } from './sample-workbook.ts';

const CHILD = fileURLToPath(new URL('./drive-error-child.ts', import.meta.url));
/** What the drive refuses, and how it says so. */
const FAULTS = [
  ['pwrite64', 'ENOSPC'],
  ['pwrite64', 'EIO'],
  ['fdatasync', 'EIO'],
  ['fsync', 'EIO'],
  ['ftruncate', 'EIO'],
  ['unlink', 'EIO'],
  ['pread64', 'EIO'],
] as const;
const SHORT_CALLS: readonly string[] = ['pwrite64', 'fsync', 'pread64'];
/** After the first so many calls only every so many-th is made to fail, or the sweep would take hours. */
const DENSE = { until: 20, thenEach: 9 };
const CALLS_MOST = 400;

interface Tally {
  points: number;
  hit: number;
  refusedSaves: number;
  acknowledged: number;
  lost: number;
  partial: number;
  unsound: number;
  crashed: number;
}

interface Scene {
  readonly folder: string;
  readonly blank: string;
  readonly file: string;
}

/** Each call to the drive in turn fails, once, or from then on for ever: nothing acknowledged may be lost, nothing half. */
export function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  if (spawnSync('strace', ['-V']).status !== 0) {
    const figures = ['drive error skipped: there is no strace here'];
    return Promise.resolve([{ harness: 'drive error', outcome: 'skipped', figures }]);
  }
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-drive-'));
  try {
    const scene = { folder, blank: join(folder, 'blank.ripecell'), file: join(folder, 'w.ripecell') };
    const created = createWorkbookFile({ file: scene.blank, name: 'Drive', kind: 'real' }, settingIn(folder));
    if (!created.ok) throw new Error(created.refusal.kind);
    created.value.close();
    const tally = sweep(scene, short);
    const control = emptyTally();
    onePoint(scene, ['pwrite64', 'EIO'], '14+', 'boasting', control);
    const bad = tally.lost + tally.partial + tally.unsound + tally.crashed;
    return Promise.resolve([
      {
        harness: 'drive error at each call',
        outcome: bad === 0 && tally.hit > 0 && tally.refusedSaves > 0 ? 'passed' : 'failed',
        figures: Object.entries(tally).map(([what, times]) => `drive error ${what} ${times}`),
      },
      {
        harness: 'drive error control: saves acknowledged in spite of it must be found missing',
        outcome: control.lost > 0 ? 'passed' : 'failed',
        figures: [`drive error control lost ${control.lost} of ${control.acknowledged}`],
      },
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const emptyTally = (): Tally => ({
  ...{ points: 0, hit: 0, refusedSaves: 0, acknowledged: 0, lost: 0, partial: 0, unsound: 0, crashed: 0 },
});

function sweep(scene: Scene, short: boolean): Tally {
  const tally = emptyTally();
  const faults = FAULTS.filter(([call]) => !short || SHORT_CALLS.includes(call));
  for (const fault of faults) {
    for (const mode of ['', '+']) {
      // The short form takes one place a fault, where saving is under way.
      const calls = short ? [fault[0].startsWith('p') ? 25 : 2] : everyCall();
      for (const call of calls) {
        if (short && mode === '+' && fault[0] !== 'pwrite64') continue;
        if (!onePoint(scene, fault, `${call}${mode}`, 'honest', tally) && !short) break;
      }
    }
  }
  return tally;
}

function everyCall(): readonly number[] {
  return Array.from({ length: CALLS_MOST }, (_, at) => at + 1).filter(
    (call) => call <= DENSE.until || call % DENSE.thenEach === 0,
  );
}

/** False when the process makes no such call any more. */
function onePoint(
  { folder, blank, file }: Scene,
  [call, code]: readonly [string, string],
  when: string,
  manner: string,
  tally: Tally,
): boolean {
  for (const ending of ['', '-wal', '-journal']) rmSync(file + ending, { force: true });
  copyFileSync(blank, file);
  const log = join(folder, 'strace.log');
  const watched = ['', '-wal', '-journal'].flatMap((ending) => ['-P', file + ending]);
  const inject = ['-e', `trace=${call}`, '-e', `inject=${call}:error=${code}:when=${when}`];
  const args = ['-f', '-qq', '-o', log, ...watched, ...inject, process.execPath, CHILD, file, manner];
  const { stdout, status, signal } = spawnSync('strace', args, { encoding: 'utf8' });
  const isHit = existsSync(log) && readFileSync(log, 'utf8').includes('INJECTED');
  tally.points += 1;
  if (!isHit) return false;
  tally.hit += 1;
  if (status !== 0 || signal !== null) tally.crashed += 1;
  takeStock(stdout.split('\n'), { folder, blank, file }, tally);
  return true;
}

function takeStock(lines: readonly string[], { folder, file }: Scene, tally: Tally): void {
  tally.refusedSaves += lines.filter((line) => line.startsWith('N ')).length;
  const opened = openWorkbookFile(file, settingIn(folder));
  if (!opened.ok) {
    tally.unsound += 1;
    return;
  }
  const rows = new Map<string, number>();
  for (const { id } of opened.value.tables.yards.all()) {
    const save = id.slice(0, id.indexOf('-'));
    rows.set(save, (rows.get(save) ?? 0) + 1);
  }
  opened.value.close();
  if (soundnessOfFile(file, null) !== 'sound') tally.unsound += 1;
  for (const line of lines) {
    const [what, number, count] = line.split(' ');
    if (what !== 'A') continue;
    tally.acknowledged += 1;
    const there = rows.get(`y${number}`) ?? 0;
    if (there === 0) tally.lost += 1;
    else if (there !== Number(count)) tally.partial += 1;
  }
}
