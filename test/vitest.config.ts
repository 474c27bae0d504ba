import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = join(import.meta.dirname, '..');

export default defineConfig({
  root,
  test: {
    alias: { electron: join(import.meta.dirname, 'double/electron.ts') },
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    pool: 'forks',
    testTimeout: 30_000,
    hookTimeout: 120_000,
  },
});
