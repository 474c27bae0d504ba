import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statfsSync, unlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import type { FaultReport } from './fault-report.ts';

const MIGRATIONS = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));
const DRIVE_KILOBYTES = 3072;
/** The drive is filled up to between these two, so that it gives out at another moment each time. */
const LEFT_FREE = { least: 16, most: 900 };
/** Far above what fits; only reached when the harness is blind. */
const SAVES_MOST = 5000;
const CONTROL_LEVELS = 5;

interface Findings {
  levels: number;
  refusedAsFull: number;
  otherwise: number;
  acknowledged: number;
  lost: number;
  wentOnOnceFreed: number;
  createdWhileFull: number;
  leftovers: number;
}

/** A drive of 3 MB runs full while someone types. Needs the right to mount; otherwise the harness is skipped. */
export function faults({ short }: { readonly short: boolean }): Promise<readonly FaultReport[]> {
  const drive = mkdtempSync(join(tmpdir(), 'ripecell-full-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${DRIVE_KILOBYTES}k`, 'tmpfs', drive]);
  if (mounted.status !== 0) {
    rmSync(drive, { recursive: true });
    return Promise.resolve([
      { harness: 'full drive', outcome: 'skipped', figures: ['full skipped: a small drive cannot be mounted here'] },
    ]);
  }
  try {
    return Promise.resolve([fillReport(drive, short ? 20 : 200), controlReport(drive)]);
  } finally {
    spawnSync('umount', [drive]);
    rmSync(drive, { recursive: true, force: true });
  }
}

function fillReport(drive: string, levels: number): FaultReport {
  const found = fillLevels(drive, levels, 'honest');
  const good = found.refusedAsFull === levels && found.wentOnOnceFreed === levels && found.lost + found.leftovers === 0;
  return {
    harness: 'full drive',
    outcome: good && found.otherwise + found.createdWhileFull === 0 ? 'passed' : 'failed',
    figures: Object.entries(found).map(([what, times]) => `full ${what} ${times}`),
  };
}

function controlReport(drive: string): FaultReport {
  const { lost, acknowledged } = fillLevels(drive, CONTROL_LEVELS, 'boasting');
  return {
    harness: 'full drive control: saves acknowledged although the drive is full must be found missing',
    outcome: lost === CONTROL_LEVELS ? 'passed' : 'failed',
    figures: [`full control lost ${lost} of ${acknowledged}`],
  };
}

/** The boasting manner acknowledges the save that was refused. */
type Manner = 'honest' | 'boasting';

function fillLevels(drive: string, levels: number, manner: Manner): Findings {
  const found: Findings = {
    levels: 0,
    refusedAsFull: 0,
    otherwise: 0,
    acknowledged: 0,
    lost: 0,
    wentOnOnceFreed: 0,
    createdWhileFull: 0,
    leftovers: 0,
  };
  for (let level = 0; level < levels; level += 1) {
    const free = LEFT_FREE.least + ((LEFT_FREE.most - LEFT_FREE.least) * level) / Math.max(1, levels - 1);
    oneLevel(drive, Math.round(free), manner, found);
    for (const name of readdirSync(drive)) rmSync(join(drive, name), { recursive: true });
  }
  return found;
}

function oneLevel(drive: string, freeKilobytes: number, manner: Manner, found: Findings): void {
  const setting: OpenSetting = {
    migrations: readMigrations(MIGRATIONS),
    safetyFolder: drive,
    now: () => new Date().toISOString(),
  };
  const created = createWorkbookFile({ file: join(drive, 'w.ripecell'), name: 'Full', kind: 'real' }, setting);
  if (!created.ok) throw new Error(created.refusal.kind);
  const workbook = created.value;
  const { bavail, bsize } = statfsSync(drive);
  const balloon = join(drive, 'balloon');
  writeFileSync(balloon, Buffer.alloc(Math.max(0, bavail * bsize - freeKilobytes * 1024)));

  found.levels += 1;
  const { acknowledged, refusal } = saveUntilRefused(workbook, manner);
  found.acknowledged += acknowledged.length;
  if (refusal === 'disk-full') found.refusedAsFull += 1;
  else found.otherwise += 1;

  const second = createWorkbookFile({ file: join(drive, 'second.ripecell'), name: 'Second', kind: 'real' }, setting);
  if (second.ok) found.createdWhileFull += 1;
  if (readdirSync(drive).some((name) => name.startsWith('second'))) found.leftovers += 1;

  unlinkSync(balloon);
  if (save(workbook, 'once-freed') === null) {
    acknowledged.push('once-freed');
    found.wentOnOnceFreed += 1;
  }
  workbook.close();
  const again = openWorkbookFile(join(drive, 'w.ripecell'), setting);
  if (!again.ok) throw new Error(again.refusal.kind);
  const present = new Set(again.value.tables.yards.all().map(({ id }) => id));
  found.lost += acknowledged.filter((id) => !present.has(id)).length;
  again.value.close();
}

function saveUntilRefused(workbook: Workbook, manner: Manner): { acknowledged: string[]; refusal: string | null } {
  const acknowledged: string[] = [];
  for (let number = 0; number < SAVES_MOST; number += 1) {
    const refusal = save(workbook, `yard-${number}`);
    if (refusal === null || manner === 'boasting') acknowledged.push(`yard-${number}`);
    if (refusal !== null) return { acknowledged, refusal };
  }
  return { acknowledged, refusal: null };
}

/** null when saved, else why not. */
function save(workbook: Workbook, id: string): string | null {
  const saved = workbook.change({ did: 'other' }, ({ yards }) =>
    ok(yards.insert({ id, name: id, note: 'x'.repeat(500) })),
  );
  if (saved.ok) return null;
  return saved.refusal.kind === 'not-saved' ? saved.refusal.reason : saved.refusal.kind;
}
