// What it costs that a save is on the drive when the line says so: against the bare writing and flushing of as many bytes.
import { spawnSync } from 'node:child_process';
import {
  closeSync,
  fdatasyncSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { aCountedWorkbook, BARS, saveForm } from './counted-workbook.ts';
import type { Goal } from './goal.ts';

const CHILD = fileURLToPath(new URL('./durable-child.ts', import.meta.url));
const ROUNDS = 400;
const MOST_TIMES = 1.3;
const FORM = 4 * BARS;

export async function goals(): Promise<readonly Goal[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  try {
    return [oneRow(folder), ...flushes(folder)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One count saved with its journal, against as many bytes as that adds to the log, appended and flushed; paired rounds. */
function oneRow(folder: string): Goal {
  const workbook = aCountedWorkbook(folder);
  const log = join(folder, 'counted.ripecell-wal');
  const before = statSync(log).size;
  saveForm(workbook, 1, 1);
  const bytes = Buffer.alloc(statSync(log).size - before, 1);
  const bare = openSync(join(folder, 'bare'), 'w');
  const ratios = Array.from({ length: ROUNDS }, (_, round) => {
    const ours = () => saveForm(workbook, round + 2, 1);
    const raw = () => {
      writeSync(bare, bytes, 0, bytes.length, round * bytes.length);
      fdatasyncSync(bare);
    };
    if (round % 2 === 0) return millisecondsOf(ours) / millisecondsOf(raw);
    const alone = millisecondsOf(raw);
    return millisecondsOf(ours) / alone;
  });
  closeSync(bare);
  workbook.close();
  const times = Math.round(100 * median(ratios)) / 100;
  return {
    id: 'durable-row',
    what: `a save of one row with its journal, against the same ${bytes.length} bytes appended and flushed`,
    value: times,
    goal: `at most ${MOST_TIMES}`,
    ok: times <= MOST_TIMES,
  };
}

/** How often a save flushes, seen from outside by strace; without it nothing is claimed. */
function flushes(folder: string): readonly Goal[] {
  if (spawnSync('strace', ['-V']).status !== 0) return [];
  return [1, FORM].map((counts) => {
    const [few, many] = [5, 25].map((saves) => flushesOf(folder, saves, counts)) as [number, number];
    const each = (many - few) / 20;
    return {
      id: `durable-flushes-${counts}`,
      what: `flushes of the drive for one form of ${counts} ${counts === 1 ? 'count' : 'counts'}, seen by strace`,
      value: each,
      goal: 'exactly 1',
      ok: each === 1,
    };
  });
}

function flushesOf(folder: string, saves: number, counts: number): number {
  const own = join(folder, `${saves}-${counts}`);
  mkdirSync(own);
  const seen = join(own, 'calls');
  const run = spawnSync('strace', [
    ...['-f', '-e', 'trace=fsync,fdatasync,sync_file_range,msync', '-o', seen],
    ...[process.execPath, CHILD, own, String(saves), String(counts)],
  ]);
  if (run.status !== 0) throw new Error(String(run.stderr));
  return readFileSync(seen, 'utf8').match(/^\d+ +f(?:data)?sync\(/gm)?.length ?? 0;
}

function millisecondsOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.POSITIVE_INFINITY;
