import { join } from 'node:path';
import { defineConfig } from 'vite';

const root = join(import.meta.dirname, '../..');

/** One CommonJS file: a sandboxed preload can require nothing but `electron`. */
export default defineConfig({
  root,
  publicDir: false,
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    outDir: join(process.env.RIPECELL_OUT ?? join(root, 'out'), 'preload'),
    emptyOutDir: true,
    target: 'node22',
    minify: false,
    rolldownOptions: {
      input: { preload: join(root, 'app/electron/preload.ts') },
      output: { format: 'cjs', entryFileNames: '[name].cjs', codeSplitting: false },
    },
  },
});
