// Builds the page, the node side (both shells) and the sandboxed preload into a side folder, then puts it in place of
// `out` in one step, so that a build that was stopped half-way never leaves half a program.
import { cpSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';

const root = join(import.meta.dirname, '../..');
const side = join(root, `out-${process.pid}`);
const started = performance.now();
process.env.RIPECELL_OUT = side;
try {
  await Promise.all(
    ['renderer', 'node', 'preload'].map((part) =>
      build({ configFile: join(import.meta.dirname, `vite.${part}.ts`), logLevel: 'warn' }),
    ),
  );
  cpSync(join(root, 'main/workbook/migrations'), join(side, 'migrations'), { recursive: true });
  const out = join(root, 'out');
  const old = `${side}-old`;
  if (existsSync(out)) renameSync(out, old);
  renameSync(side, out);
  rmSync(old, { recursive: true, force: true });
} catch (error) {
  rmSync(side, { recursive: true, force: true });
  throw error;
}
console.log(`built in ${((performance.now() - started) / 1000).toFixed(1)} s`);
