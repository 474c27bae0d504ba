import { existsSync, readFileSync } from 'node:fs';
import { calendarKinds } from './calendar-kinds.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** Runs all vectors of the files and prints what failed. The exit code: 1 on any failure, or when nothing was checked. */
export async function runVectorFiles(files: readonly string[]): Promise<number> {
  if (files.length === 0) {
    console.error('Name at least one file: npm run vectors -- FILE');
    return 1;
  }
  const kinds = await loadKinds();
  let passed = 0;
  let failed = 0;
  for (const file of files) {
    const tally = runFile(file, kinds);
    passed += tally.passed;
    failed += tally.failed;
  }
  console.log(`${passed} passed, ${failed} failed`);
  return failed > 0 || passed === 0 ? 1 : 0;
}

function runFile(file: string, kinds: KindTable): Tally {
  const vectors = readVectors(file);
  if (typeof vectors === 'string') {
    console.log(vectors);
    return { passed: 0, failed: 1 };
  }
  let failed = 0;
  for (const vector of vectors) {
    const failures = checkVector(vector, kinds);
    if (failures.length > 0) failed += 1;
    for (const failure of failures) console.log(`${vector.name}: ${failure}`);
  }
  return { passed: vectors.length - failed, failed };
}

/** Exported for the tests of the runner. */
export function checkVector(vector: Vector, kinds: KindTable): readonly Failure[] {
  const run = kinds[vector.kind];
  if (!run) return [`no such kind of vector: ${vector.kind}`];
  if (!vector.source) return ['names no source'];
  try {
    return run(vector);
  } catch (error) {
    return [`could not be read: ${error instanceof Error ? error.message.replaceAll(/\s+/g, ' ') : String(error)}`];
  }
}

function readVectors(file: string): readonly Vector[] | string {
  if (!existsSync(file)) return `${file}: no such file`;
  try {
    const content: { readonly vectors?: readonly Vector[] } = JSON.parse(readFileSync(file, 'utf8'));
    return Array.isArray(content.vectors) ? content.vectors : `${file}: holds no list called "vectors"`;
  } catch (error) {
    return `${file}: not readable as JSON (${error instanceof Error ? error.message : String(error)})`;
  }
}

/** The calendar's kinds, and those of statistics where that half is there. */
async function loadKinds(): Promise<KindTable> {
  const statistics = new URL('./statistics-kinds.ts', import.meta.url);
  if (!existsSync(statistics)) return calendarKinds;
  const { statisticsKinds }: { readonly statisticsKinds: KindTable } = await import(statistics.href);
  return { ...statisticsKinds, ...calendarKinds };
}
