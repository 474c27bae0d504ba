// Opening a large workbook: a process of its own that opens it as the program does and answers a first question, against
// one that does nothing, and one that opens the file with the database library alone.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { Tables, Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aBar, aBatch } from '../builders/batch.ts';
import { MIGRATIONS_FOLDER } from '../builders/desk.ts';
import type { Goal } from './calendar.bench.ts';
import { aCountedWorkbook, mustOk } from './counted-workbook.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BYTES = 50_000_000;
const SEASONS = { first: 2007, number: 20, batches: 60, bars: 4 };
const STAGES = ['given', 'taken', 'sealed'] as const;
const SUMS = {
  ...{ given: 40, taken: 30, enteredSealing: 30, sealed: 28, placed: 28 },
  ...{ emergenceKnown: 28, emerged: 25, matingKnown: 25, proved: 19, laying: 20 },
};
const ROUNDS = 11;
const MOST_TIMES = 1.6;

export async function goals(): Promise<readonly Goal[]> {
  // Beside the packages, so that the built child finds the database library.
  const folder = mkdtempSync(join(ROOT, 'node_modules/.ripecell-bench-'));
  const data = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  try {
    const file = aLargeWorkbook(data);
    await buildChild(folder);
    const whole = () => cpuOf(join(folder, 'open-child.js'), file, MIGRATIONS_FOLDER, join(data, 'safety'));
    const bare = () => cpuOf('-e', PRINT_CPU);
    const library = () => cpuOf('-e', READ_A_ROW + PRINT_CPU, file);
    const rounds = Array.from({ length: ROUNDS }, () => ({ bare: bare(), library: library(), whole: whole() }));
    const times = (of: 'library' | 'whole') => Math.round(100 * median(rounds.map((one) => one[of] / one.bare))) / 100;
    const whatFloor = `the database library alone, opening it and reading one row, takes ${times('library')}`;
    return [
      {
        id: 'open-50mb',
        what: `CPU from the start of the process to the comparison of 20 seasons out of a workbook of ${Math.round(statSync(file).size / 1e6)} MB, against bare Node (${whatFloor})`,
        value: times('whole'),
        goal: `at most ${MOST_TIMES}`,
        ok: times('whole') <= MOST_TIMES,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
    rmSync(data, { recursive: true, force: true });
  }
}

const PRINT_CPU = 'const { user, system } = process.cpuUsage(); console.log((user + system) / 1000);';
const READ_A_ROW = `const Database = require('better-sqlite3');
  new Database(process.argv[1], { readonly: true }).prepare('SELECT * FROM batch LIMIT 1').get();`;

function cpuOf(...args: readonly string[]): number {
  const run = spawnSync(process.execPath, args, { cwd: ROOT, encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
  return Number(run.stdout);
}

/** Built as the shells are. */
const buildChild = (outDir: string) =>
  build({
    ...{ root: ROOT, configFile: false, publicDir: false, logLevel: 'error' },
    ssr: { noExternal: true, external: ['better-sqlite3'] },
    build: {
      ...{ ssr: true, outDir, target: 'node22', minify: false },
      rolldownOptions: {
        input: { 'open-child': fileURLToPath(new URL('./open-child.ts', import.meta.url)) },
        output: { format: 'es', entryFileNames: '[name].js' },
      },
    },
  });

/** Twenty seasons of sixty batches, and so many corrections of their counts that the journal fills the file. */
function aLargeWorkbook(folder: string): string {
  const workbook = aCountedWorkbook(folder);
  for (let season = 0; season < SEASONS.number; season += 1)
    inOneStep(workbook, (tables) => addSeason(tables, SEASONS.first + season));
  for (let round = 1; statSync(workbook.file).size < BYTES; round += 1)
    inOneStep(workbook, ({ counts }) => {
      for (let season = 0; season < SEASONS.number; season += 1)
        for (const row of countsOf(`${SEASONS.first + season}-1`, round)) counts.update(row);
    });
  workbook.close();
  return workbook.file;
}

function addSeason({ batches, bars, counts, tallies }: Tables, season: number): void {
  for (let number = 1; number <= SEASONS.batches; number += 1) {
    const id = `${season}-${number}`;
    batches.insert(aBatch({ id, code: id, season }));
    tallies.put({ batchId: id, ...SUMS });
    for (let bar = 1; bar <= SEASONS.bars; bar += 1)
      bars.insert(aBar({ id: `${id}-${bar}`, batchId: id, number: bar }));
    for (const row of countsOf(id, 0)) counts.insert(row);
  }
}

const countsOf = (batchId: string, round: number) =>
  Array.from({ length: SEASONS.bars }, (_, bar) =>
    STAGES.map((stage) => ({
      ...{ id: `${batchId}-${bar + 1}-${stage}`, batchId, barId: `${batchId}-${bar + 1}` },
      ...{ stage, cells: 10 + (round % 9), countedOn: '2026-05-09' },
    })),
  ).flat();

function inOneStep(workbook: Workbook, work: (tables: Tables) => void): void {
  mustOk(
    workbook.change({ did: 'other' }, (tables) => {
      work(tables);
      return ok(null);
    }),
  );
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.POSITIVE_INFINITY;
