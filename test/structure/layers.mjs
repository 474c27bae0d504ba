// Runs the layer rules, and fails when the tool saw fewer modules than there are source files: with a compiler it does
// not know it would silently read no TypeScript at all and pass.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import extractOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import extractTsConfig from 'dependency-cruiser/config-utl/extract-ts-config';

const root = join(import.meta.dirname, '../..');
process.chdir(root);
const folders = ['app', 'main', 'renderer', 'shared', 'test'];
const sources = folders.flatMap((folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx)$/.test(entry.name) && !entry.name.endsWith('.d.ts'))
    .map((entry) => join(entry.parentPath, entry.name)),
);
const options = await extractOptions(join(root, '.dependency-cruiser.cjs'));
const { output } = await cruise(folders, options, {}, { tsConfig: extractTsConfig(join(root, 'tsconfig.json')) });
const seen = new Set(output.modules.map((module) => module.source).filter((source) => /\.(ts|tsx)$/.test(source)));
const unseen = sources.filter((source) => !seen.has(source.replaceAll('\\', '/')));
const violations = output.summary.violations.filter((violation) => violation.rule.severity === 'error');
for (const { rule, from, to } of violations) {
  const { comment } = output.summary.ruleSetUsed.forbidden.find(({ name }) => name === rule.name) ?? {};
  console.error(`${rule.name}: ${from} -> ${to}\n    ${comment ?? ''}`);
}
for (const source of unseen) console.error(`not seen by the layer check: ${source}`);
if (violations.length > 0 || unseen.length > 0) process.exit(1);
console.log(`layers: ${sources.length} source files, no violation`);
