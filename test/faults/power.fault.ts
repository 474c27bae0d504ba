import { spawn, spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { soundnessOfFile } from '../../main/workbook/safety-copy.ts';
import type { FaultReport } from './fault-report.ts';
import { settingIn } from './sample-workbook.ts';

const CHILD = fileURLToPath(new URL('./power-child.ts', import.meta.url));
const DRIVE_BYTES = 48 * 1024 * 1024;
/** Milliseconds of saving before the cut. */
const CUT = { least: 60, most: 500 };
/** The control may be lucky in one cut, not in so many. */
const CONTROL_CUTS = { short: 8, long: 20 };

interface Tally {
  cuts: number;
  acknowledged: number;
  lost: number;
  cutsWithLoss: number;
  unsound: number;
}

interface Bench {
  readonly folder: string;
  readonly image: string;
  readonly drive: string;
  readonly blank: string;
}

/**
 * Power cuts: someone types on a small drive of its own; what lies on the drive's image at the moment of the cut is all
 * that is left. What the system still held in memory is gone, as it is when the plug is pulled. Models one file system,
 * no drive that lies about flushing. Needs the right to mount.
 */
export async function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-power-'));
  const bench = {
    folder,
    image: join(folder, 'a.img'),
    drive: join(folder, 'm'),
    blank: join(folder, 'blank.ripecell'),
  };
  mkdirSync(bench.drive);
  try {
    if (!canMount(bench)) {
      const figures = ['power skipped: a drive of its own cannot be mounted here'];
      return [{ harness: 'power cut', outcome: 'skipped', figures }];
    }
    const created = createWorkbookFile({ file: bench.blank, name: 'Power', kind: 'real' }, settingIn(folder));
    if (!created.ok) throw new Error(created.refusal.kind);
    created.value.close();
    const flushed = await cuts(bench, 'flushed', short ? 2 : 100, false);
    const control = await cuts(bench, 'unflushed', short ? CONTROL_CUTS.short : CONTROL_CUTS.long, short);
    // A few cuts may be lucky; SQLite that never flushes at all (OFF) then shows that the harness is not blind.
    const lastResort = short && control.lost === 0 ? await cuts(bench, 'never', CONTROL_CUTS.short, true) : null;
    return [
      {
        harness: 'power cut in mid-save',
        outcome: flushed.lost + flushed.unsound === 0 && flushed.acknowledged > 0 ? 'passed' : 'failed',
        figures: Object.entries(flushed).map(([what, times]) => `power ${what} ${times}`),
      },
      {
        harness: 'power cut control: saves that are not flushed must be lost',
        outcome: control.lost + (lastResort?.lost ?? 0) > 0 ? 'passed' : 'failed',
        figures: [
          `power control lost ${control.lost} of ${control.acknowledged} in ${control.cuts} cuts`,
          ...(lastResort === null ? [] : [`power control without any flush lost ${lastResort.lost}`]),
        ],
      },
    ];
  } finally {
    spawnSync('umount', [bench.drive]);
    rmSync(folder, { recursive: true, force: true });
  }
}

async function cuts(bench: Bench, manner: string, most: number, endAtFirstLoss: boolean): Promise<Tally> {
  const tally: Tally = { cuts: 0, acknowledged: 0, lost: 0, cutsWithLoss: 0, unsound: 0 };
  while (tally.cuts < most && !(endAtFirstLoss && tally.lost > 0)) {
    makeDrive(bench);
    copyFileSync(bench.blank, join(bench.drive, 'w.ripecell'));
    run('sync', '-f', bench.drive);
    const cut = join(bench.folder, 'cut.img');
    const acknowledged = await saveUntilCut(join(bench.drive, 'w.ripecell'), manner, () =>
      copyFileSync(bench.image, cut),
    );
    run('umount', bench.drive);
    run('mount', '-o', 'loop', cut, bench.drive);
    takeStock(tally, acknowledged, bench);
    run('umount', bench.drive);
  }
  return tally;
}

/** Runs the saving process, kills it in its course and cuts at that very moment; returns what it had acknowledged. */
function saveUntilCut(file: string, manner: string, cut: () => void): Promise<readonly string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [CHILD, file, manner], { stdio: ['ignore', 'pipe', 'inherit'] });
    let said = '';
    let isAimed = false;
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (isAimed) return;
      isAimed = true;
      setTimeout(
        () => {
          child.kill('SIGKILL');
          cut();
        },
        CUT.least + Math.random() * (CUT.most - CUT.least),
      );
    });
    child.on('error', reject);
    child.on('close', (_code, signal) => {
      const lines = said.split('\n').filter((line) => /^A y\d+$/.test(line));
      if (signal === 'SIGKILL') resolve(lines.map((line) => line.slice(2)));
      else reject(new Error('The saving process ended by itself.'));
    });
  });
}

function takeStock(tally: Tally, acknowledged: readonly string[], { drive, folder }: Bench): void {
  tally.cuts += 1;
  tally.acknowledged += acknowledged.length;
  const file = join(drive, 'w.ripecell');
  const opened = openWorkbookFile(file, settingIn(folder));
  if (!opened.ok) {
    tally.unsound += 1;
    return;
  }
  const present = new Set(opened.value.tables.yards.all().map(({ id }) => id));
  const lost = acknowledged.filter((id) => !present.has(id)).length;
  tally.lost += lost;
  if (lost > 0) tally.cutsWithLoss += 1;
  opened.value.close();
  if (soundnessOfFile(file, null) !== 'sound') tally.unsound += 1;
}

function canMount(bench: Bench): boolean {
  try {
    makeDrive(bench);
    run('umount', bench.drive);
    return true;
  } catch {
    return false;
  }
}

function makeDrive({ image, drive }: Bench): void {
  writeFileSync(image, '');
  truncateSync(image, DRIVE_BYTES);
  run('mkfs.ext4', '-q', '-F', '-E', 'lazy_itable_init=0,lazy_journal_init=0', image);
  // The system's own flush every few seconds would hide, on a busy machine, that nobody else flushes.
  run('mount', '-o', 'loop,commit=300', image, drive);
}

function run(command: string, ...args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(command, args, { encoding: 'utf8' });
  if (status !== 0) throw error ?? new Error(`${command}: ${stderr}`);
}
