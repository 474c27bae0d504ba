// What the first page needs before it runs is followed from import to import. Schemas, charts, dialogs and the words of
// other pages belong to the core and to what is fetched later: they would make the first page twice as heavy.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

/** Imports of values; those of types are gone before the page is made, and `import(…)` is fetched later. */
function valueImports(text: string): readonly string[] {
  return [...text.matchAll(/^(?:import|export)\s+(?!type\b)(\{[^}]*\}|[^'{]*)?\s*(?:from\s+)?'([^']+)';/gm)]
    .filter(
      ([, names]) =>
        !names?.startsWith('{') ||
        names
          .replace(/[{}\s]/g, '')
          .split(',')
          .some((name) => name && !isTypeName(names, name)),
    )
    .map((match) => match[2] ?? '');
}
const isTypeName = (names: string, name: string): boolean =>
  name.startsWith('type') && new RegExp(`type\\s+${name.slice(4)}`).test(names);

/** Every file and package reached from the entry, with the file that asks for it. */
function reached(entry: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>([[entry, '']]);
  const waiting = [entry];
  while (waiting.length > 0) {
    const file = waiting.pop() ?? '';
    for (const wanted of valueImports(readFileSync(join(root, file), 'utf8'))) {
      const target = wanted.startsWith('.') ? relative(root, join(root, dirname(file), wanted)) : wanted;
      if (found.has(target)) continue;
      found.set(target, file);
      if (wanted.startsWith('.') && /\.tsx?$/.test(target) && existsSync(join(root, target))) waiting.push(target);
    }
  }
  return found;
}

test('the first page carries no schema library, no charts, no dialogs and no words of other pages', () => {
  const all = reached('renderer/main.tsx');
  // The walk itself works: the frame, its words and the theme are reached.
  for (const known of [
    'renderer/shell/App.tsx',
    'shared/text/english/first-words.ts',
    '@mui/material',
    'react-dom/client',
  ])
    expect([...all.keys()]).toContain(known);
  const heavy = [
    'zod',
    'recharts',
    'papaparse',
    'read-excel-file',
    'pdfjs-dist/legacy/build/pdf.mjs',
    '@tanstack/react-virtual',
    'shared/text/english/english.ts',
    'shared/text/english/refusals.ts',
  ].flatMap((name) => {
    const by = all.get(name);
    return by === undefined ? [] : [`${name}, asked for by ${by}`];
  });
  expect(heavy).toEqual([]);
  const drawn = [...all.keys()].filter((file) => file.startsWith('renderer/'));
  const texts = drawn.map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') }));
  // A dialog draws with a fifth of the component library; it is fetched when it opens.
  expect(
    texts.filter(({ text }) => /import \{[^}]*\bDialog\b[^}]*\} from '@mui/.test(text)).map(({ file }) => file),
  ).toEqual([]);
});

test('what is drawn on the first page says only the first words, so that it never waits for the others', () => {
  const drawn = [...reached('renderer/main.tsx').keys()].filter((file) => /^renderer\/.*\.tsx$/.test(file));
  expect(drawn.length).toBeGreaterThan(15);
  const waiting = drawn.filter((file) => /\b(useWords|useSentences)\(/.test(readFileSync(join(root, file), 'utf8')));
  // The lines about a refusal wait behind a boundary of their own.
  expect(waiting).toEqual(['renderer/components/ChangeLines.tsx']);
});

const FOR_PAPERS = ['pdfkit', 'qrcode'];
const FOR_TABLES = ['papaparse', 'read-excel-file/universal', 'write-excel-file/node'];
const FOR_RATES = ['beta-cdf', 'beta-quantile', 'normal-cdf'].map((name) => `@stdlib/stats-base-dists-${name}`);

test.each(['app/loopback/loopback.ts', 'app/electron/electron.ts'])(
  'a start of %s fetches no library for papers, tables and rates: the first answer does not wait for them',
  (shell) => {
    const all = reached(shell);
    for (const known of ['main/api/router.ts', 'main/operations/today/get-today.ts', 'better-sqlite3'])
      expect([...all.keys()]).toContain(known);
    const heavy = [...FOR_PAPERS, ...FOR_TABLES, ...FOR_RATES].flatMap((name) => {
      const by = all.get(name);
      return by === undefined ? [] : [`${name}, asked for by ${by}`];
    });
    expect(heavy).toEqual([]);
  },
);
