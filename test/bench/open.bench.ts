// Opening a large workbook: a process of its own that opens it as the program does and answers a first question, against
// one that does nothing, and one that opens the file with the database library alone.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { MIGRATIONS_FOLDER } from '../builders/desk.ts';
import type { Goal } from './goal.ts';
import { aLargeWorkbook } from './large-workbook.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BYTES = 50_000_000;
const ROUNDS = 11;
const MOST_TIMES = 1.6;

export async function goals(): Promise<readonly Goal[]> {
  // Beside the packages, so that the built child finds the database library.
  const folder = mkdtempSync(join(ROOT, 'node_modules/.ripecell-bench-'));
  const data = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  try {
    const file = aLargeWorkbook(data, BYTES);
    await buildChild(folder);
    // As in the package: Node is not left to find out how the file is written.
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
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

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.POSITIVE_INFINITY;
