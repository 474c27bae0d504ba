import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = join(import.meta.dirname, '..');

export default defineConfig({
  root,
  test: {
    alias: { electron: join(import.meta.dirname, 'double/electron.ts') },
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    pool: 'forks',
    // One a core; left to itself the runner keeps one core free, which on two halves the speed.
    maxWorkers: '100%',
    // A page is asked again until it shows what is expected; a busy machine may take its time.
    expect: { poll: { timeout: 10_000 } },
    testTimeout: 90_000,
    hookTimeout: 120_000,
  },
});
