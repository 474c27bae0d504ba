import { join } from 'node:path';
import { defineConfig } from 'vite';

const root = join(import.meta.dirname, '../..');

/** Both shells as ES modules for Node. Packages with native code or data files stay outside the bundle. */
export default defineConfig({
  root,
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3', 'electron', 'pdfkit', 'qrcode'] },
  build: {
    ssr: true,
    outDir: join(process.env.RIPECELL_OUT ?? join(root, 'out'), 'main'),
    emptyOutDir: true,
    target: 'node22',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: {
        electron: join(root, 'app/electron/electron.ts'),
        loopback: join(root, 'app/loopback/loopback.ts'),
        'checking-worker': join(root, 'app/adapters/checking-worker.ts'),
        'reckoning-worker': join(root, 'app/adapters/reckoning-worker.ts'),
      },
      output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
