import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = join(import.meta.dirname, '..');

/** Started in a process of its own for each file: what they load keeps windows, servers or a clock set for them alone. */
const ALONE = ['test/app/**', 'test/faults/**'];
const JOURNEYS = 'test/journeys/**';
const TESTS = ['test/**/*.test.ts', 'test/**/*.test.tsx'];

const common = {
  alias: { electron: join(import.meta.dirname, 'double/electron.ts') },
  pool: 'forks',
  // A page is asked again until it shows what is expected; a busy machine may take its time.
  expect: { poll: { timeout: 20_000 } },
  // Processes that a test starts find what they run already read.
  env: { NODE_COMPILE_CACHE: join(root, 'node_modules/.cache/compiled') },
  testTimeout: 90_000,
  hookTimeout: 120_000,
} as const;

export default defineConfig({
  root,
  test: {
    // One a core; left to itself the runner keeps one core free, which on two halves the speed.
    maxWorkers: '100%',
    projects: [
      // The sources are loaded once a core, not once a file: that was most of the time these took.
      { root, test: { ...common, name: 'parts', include: TESTS, exclude: [...ALONE, JOURNEYS], isolate: false } },
      {
        root,
        test: {
          ...common,
          name: 'alone',
          include: ALONE.flatMap((folder) => [`${folder}/*.test.ts`, `${folder}/*.test.tsx`]),
        },
      },
      {
        root,
        // A browser on a busy machine may miss a beat; the runner names what passed only at the second try.
        test: { ...common, name: 'journeys', include: [`${JOURNEYS}/*.test.ts`], retry: 1 },
      },
    ],
  },
});
