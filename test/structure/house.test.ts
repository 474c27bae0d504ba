// The rules of the house that a tool can check. The message says which file, and what to do.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

function sources(): readonly { readonly file: string; readonly text: string }[] {
  return ['app', 'main', 'renderer', 'shared', 'test'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs|cjs)$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name))
      .map((file) => ({ file: relative(root, file).replaceAll('\\', '/'), text: readFileSync(file, 'utf8') })),
  );
}

const all = sources();
const isTest = (file: string) => file.startsWith('test/');
/** Tables of facts and catalogues of words may be long. */
const mayBeLong = (file: string) => /^shared\/(biology|text)\//.test(file);

const LONGEST_FILE = 400;
const LONGEST_FUNCTION = 50;
/** Markup is taller than logic. */
const LONGEST_COMPONENT = 80;

describe('the house', () => {
  test('sees the sources it is meant to check', () => {
    expect(all.length).toBeGreaterThan(300);
  });

  test('has no file longer than 400 lines', () => {
    const long = all.filter(({ file, text }) => !mayBeLong(file) && text.split('\n').length > LONGEST_FILE);
    expect(long.map(({ file }) => file)).toEqual([]);
  });

  test('has no function longer than a screen', () => {
    const long = all.filter(({ file }) => !isTest(file) && /\.tsx?$/.test(file)).flatMap(longFunctions);
    expect(long).toEqual([]);
  });

  test('has no folder of leftovers and no default export', () => {
    expect(all.filter(({ file }) => /\/(utils|helpers|common|misc)\//.test(file)).map(({ file }) => file)).toEqual([]);
    const withDefault = all.filter(
      ({ file, text }) => /^export default /m.test(text) && !/(config|vite\.\w+)\.ts$/.test(file),
    );
    expect(withDefault.map(({ file }) => file)).toEqual([]);
  });

  test.each([
    ['days reckoned in milliseconds', /86_?400_?000/],
    ['a day cut out of an instant', /toISOString\(\)\s*\.slice\(0, ?10\)/],
    ['an escape from the types', /\bas any\b|: any\b|@ts-ignore/],
    ['markup made from text', /innerHTML|dangerouslySetInnerHTML/],
  ])('has nowhere %s', (_what, pattern) => {
    // Benches hold peers that do it the other way.
    const checked = all.filter(
      ({ file }) => file !== 'test/structure/house.test.ts' && !file.startsWith('test/bench/'),
    );
    const found = checked.filter(({ text }) => pattern.test(text));
    expect(found.map(({ file }) => file)).toEqual([]);
  });

  test('keeps every sentence of the page in the catalogue', () => {
    const literal = />\s*[A-Z][a-z]+ [a-z]+[^<>{}]*</;
    const found = all.filter(
      ({ file, text }) => file.startsWith('renderer/') && file.endsWith('.tsx') && literal.test(text),
    );
    expect(found.map(({ file }) => file)).toEqual([]);
  });

  test('touches the open workbook with the file system only where no lock can be held', () => {
    const users = all.filter(
      ({ file, text }) =>
        file.startsWith('main/') && /from 'node:fs'/.test(text) && !/^main\/(workbook|paper|exchange)\//.test(file),
    );
    expect(users.map(({ file }) => file)).toEqual([]);
  });
});

function longFunctions({ file, text }: { readonly file: string; readonly text: string }): readonly string[] {
  const kind = file.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
  const most = file.endsWith('.tsx') ? LONGEST_COMPONENT : LONGEST_FUNCTION;
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      const lines =
        source.getLineAndCharacterOfPosition(node.end).line -
        source.getLineAndCharacterOfPosition(node.getStart()).line +
        1;
      if (lines > most)
        found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${lines} lines`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
