import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { appRouter } from '../../main/api/router.ts';
import { RECKONED } from '../../shared/contract/call.ts';

/** tRPC keeps its table flat, by full name, though its type shows it nested. */
const table = appRouter._def.procedures as unknown as Readonly<
  Record<string, { readonly _def: { readonly type: string } }>
>;

const procedures = Object.entries(table).map(([path, procedure]) => ({
  path,
  kind: procedure._def.type,
  feature: path.split('.')[0] ?? '',
  name: path.split('.')[1] ?? '',
}));

const root = new URL('../../', import.meta.url);
const fileNamed = (name: string) => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

test('the table holds every feature of the workbook', () => {
  expect(new Set(procedures.map(({ feature }) => feature))).toEqual(
    new Set([
      'workbook',
      'batches',
      'hives',
      'boxes',
      'feeding',
      'notes',
      'queens',
      'today',
      'season',
      'print',
      'files',
      'settings',
      'methods',
      'weather',
      'copies',
      'drafts',
      'history',
    ]),
  );
  expect(procedures.length).toBeGreaterThan(35);
});

describe.each(procedures)('$path', ({ kind, feature, name }) => {
  const file = `operations/${feature}/${fileNamed(name)}`;

  test('is an operation in a file of its own name, with a test', () => {
    expect(existsSync(new URL(`main/${file}.ts`, root)), `main/${file}.ts`).toBe(true);
    expect(existsSync(new URL(`test/main/${file}.test.ts`, root)), `test/main/${file}.test.ts`).toBe(true);
  });

  test('asks if its name asks, and changes if its name changes', () => {
    const asks = /^(get|list|compare|preview|offer)[A-Z]/.test(name);
    expect(kind).toBe(asks ? 'query' : 'mutation');
  });

  test('is known as reckoned if its question goes to the thread that reckons', () => {
    const reckons = kind === 'query' && /\breckon\(/.test(readFileSync(new URL(`main/${file}.ts`, root), 'utf8'));
    expect(RECKONED.has(`${feature}.${name}`)).toBe(reckons);
  });
});
