import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { STYLE_WORD } from '../../shared/contract/page-policy.ts';

const root = join(import.meta.dirname, '../..');

export default defineConfig({
  root: join(root, 'renderer'),
  base: './',
  plugins: [react()],
  html: { cspNonce: STYLE_WORD },
  worker: { format: 'es' },
  build: {
    outDir: join(process.env.RIPECELL_OUT ?? join(root, 'out'), 'renderer'),
    emptyOutDir: true,
    target: 'chrome138',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        // Two files are called first-words; a German one is known by its name.
        chunkFileNames: ({ moduleIds }) =>
          moduleIds.at(-1)?.endsWith('/german/first-words.ts')
            ? 'assets/german-first-[hash].js'
            : 'assets/[name]-[hash].js',
        codeSplitting: {
          groups: [{ name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ }],
        },
      },
    },
  },
});
