// The vectors check the functions that the window uses, and no others: what a kind of vector imports from the yield engine
// must be reached from an operation, declaration by declaration.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const filesIn = (folder: string) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));

interface Module {
  /** Local name to the file and name it comes from; types left out. */
  readonly imports: ReadonlyMap<string, string>;
  /** Each declaration at the left margin with its text; formatted code has nothing else there. */
  readonly declarations: ReadonlyMap<string, string>;
}

const IMPORT = /^import (?!type )(?:\w+, )?\{([^}]*)\} from '(\.[^']*)';/gm;
const DECLARATION = /^(?:export )?(?:async )?(?:function\*?|const|class) (\w+)/;

function read(file: string): Module {
  const text = readFileSync(join(ROOT, file), 'utf8');
  const imports = new Map<string, string>();
  for (const [, names = '', from = ''] of text.matchAll(IMPORT))
    for (const name of names.split(',').map((one) => one.trim()))
      if (name !== '' && !name.startsWith('type ')) {
        const [theirs = '', ours = theirs] = name.split(' as ');
        imports.set(ours, `${relative(ROOT, join(ROOT, dirname(file), from))}#${theirs}`);
      }
  const declarations = new Map<string, string>();
  for (const part of text.split(/\n(?=\S)/)) {
    const name = DECLARATION.exec(part)?.[1];
    const last = [...declarations.keys()].at(-1);
    if (name) declarations.set(name, part);
    else if (last && /^[)}\]]/.test(part)) declarations.set(last, `${declarations.get(last)}\n${part}`);
  }
  return { imports, declarations };
}

/** Operations hand what takes a while to the reckoner, which runs in a thread of its own: both ends are named by kind. */
const RECKONER = 'main/engine/yield/reckon.ts#startReckoning';

/** Every engine declaration reached from what the operations import, as file#name. */
function reachedByOperations(): ReadonlySet<string> {
  const modules = new Map(filesIn('main/engine').map((file) => [file, read(file)]));
  const reached = new Set<string>();
  const ahead = [RECKONER, ...filesIn('main/operations').flatMap((file) => [...read(file).imports.values()])];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    const [file = '', name = ''] = next.split('#');
    const module = modules.get(file);
    if (!module || reached.has(next)) continue;
    reached.add(next);
    for (const word of new Set(module.declarations.get(name)?.match(/\b[A-Za-z]\w*\b/g) ?? [])) {
      const imported = module.imports.get(word);
      if (imported) ahead.push(imported);
      if (word !== name && module.declarations.has(word)) ahead.push(`${file}#${word}`);
    }
  }
  return reached;
}

test('every engine function a vector runs is reached from an operation', () => {
  const reached = reachedByOperations();
  const run = filesIn('test/vectors').flatMap((file) =>
    [...read(file).imports.values()].filter((name) => name.startsWith('main/engine/yield/')),
  );
  expect(run.length).toBeGreaterThan(30);
  expect([...new Set(run)].filter((name) => !reached.has(name))).toEqual([]);
});
