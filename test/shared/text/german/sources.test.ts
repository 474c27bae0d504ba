import { glob } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { wordsOf } from '../../../../shared/text/catalogue.ts';

const { sources: english } = wordsOf('en');
const { sources: german } = wordsOf('de');

const BIOLOGY = join(import.meta.dirname, '../../../../shared/biology');

/** Every text under the key `source`, and every one that shared/biology/sources.ts names. */
async function allSources(): Promise<ReadonlySet<string>> {
  const found = new Set<string>();
  const collect = (value: unknown, key: string, isSource: boolean): void => {
    if (typeof value === 'string' && (isSource || key === 'source')) found.add(value);
    else if (typeof value === 'object' && value !== null)
      for (const [inner, one] of Object.entries(value)) collect(one, inner, false);
  };
  for await (const file of glob('*.ts', { cwd: BIOLOGY })) {
    const module: object = await import(pathToFileURL(join(BIOLOGY, file)).href);
    for (const [name, value] of Object.entries(module)) collect(value, name, file === 'sources.ts');
  }
  return found;
}

/** Titles and names of publishers, which stay in their language. */
const TITLES = [
  'Smith, Queen Rearing Simplified',
  'Penn State Extension, cell-builder basics 2020',
  'Florida Department of Agriculture, best practices for queen breeders',
  'Merkblatt der Welsh Beekeepers’ Association über Weiselzellen',
];
/** Not words of German, and in every English sentence about a source. */
const ENGLISH =
  /\b(the|of|at|with|on|as|by|and|for|from|to|section|notes?|page|practice|quoted|description|study|reckoned|leaflet|memory)\b/;

test('German tells every source in German, but for titles; English leaves it as it is', async () => {
  const all = await allSources();
  expect(all.size).toBeGreaterThan(40);
  const left = [...all]
    .flatMap((source) => german.told(source).split('; '))
    .filter(
      (told) =>
        ENGLISH.test(told.replace(/National Bee Unit|Journal of|Acta .*$/g, '')) &&
        !TITLES.some((title) => told.includes(title)),
    );
  expect([...new Set(left)]).toEqual([]);
  for (const source of all) expect(english.told(source)).toBe(source);
});

test('a source in parts is told part by part, and sections are named', () => {
  expect(
    german.told('Büchler et al. 2013, COLOSS BEEBOOK, J. Apic. Res. 52(1), section 2.1.3.4; common practice'),
  ).toBe('Büchler et al. 2013, COLOSS BEEBOOK, J. Apic. Res. 52(1), Abschnitt 2.1.3.4; übliche Praxis');
});
