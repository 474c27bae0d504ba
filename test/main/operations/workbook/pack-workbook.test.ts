import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { openDemo } from '../../../../main/operations/workbook/open-demo.ts';
import { openWorkbook } from '../../../../main/operations/workbook/open-workbook.ts';
import { packWorkbook } from '../../../../main/operations/workbook/pack-workbook.ts';
import { ok, refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle } from '../../../builders/lifecycle.ts';
import { aFolder } from '../../../builders/workbook-file.ts';
import { aYard } from '../../../builders/yard.ts';

/** A computer with a workbook of one yard, and a safety copy from before the yard was there. */
function aComputerAtWork() {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens 2026', null));
  mustOk(lifecycle.keeper.copies.make('by-hand'));
  mustOk(
    lifecycle.keeper.current?.change({ did: 'save-yard', yard: 'Orchard' }, ({ yards }) => {
      yards.insert(aYard({ id: 'orchard', name: 'Orchard' }));
      return ok(null);
    }) ?? refuse({ kind: 'no-workbook-open' }),
  );
  return lifecycle;
}
const leftovers = (folder: string) =>
  existsSync(folder) ? readdirSync(folder).filter((name) => /^moving-|\.part$/.test(name)) : [];

describe('a package', () => {
  test('made here and opened there is the same workbook with its safety copies', () => {
    const here = aComputerAtWork();
    const stick = aFolder();
    const packed = mustOk(packWorkbook(here, { folder: stick }));
    expect(packed).toMatchObject({ file: join(stick, 'Queens 2026 to move 2026-06-01.zip'), copies: 1 });
    here.keeper.stop();

    const computer = aComputer();
    const there = aLifecycle({}, computer);
    const state = mustOk(openWorkbook(there, { file: packed.file }));
    expect(state.open).toMatchObject({
      name: 'Queens 2026',
      file: join(computer.documents, 'Queens 2026.ripecell'),
      readOnly: false,
    });
    expect(there.keeper.current?.tables.yards.all().map(({ name }) => name)).toEqual(['Orchard']);
    const { copies } = there.keeper.copies.list();
    expect(copies).toMatchObject([{ purpose: 'by-hand', checked: true, place: 'here' }]);
    const copy = mustOk(there.keeper.copies.look(copies[0]?.id ?? ''));
    expect(copy.tables.yards.all()).toEqual([]);
    expect([leftovers(computer.programData), leftovers(stick), leftovers(computer.documents)]).toEqual([[], [], []]);
  });

  test('never takes the place of a workbook or a package that is there', () => {
    const here = aComputerAtWork();
    const stick = aFolder();
    mustOk(packWorkbook(here, { folder: stick }));
    const second = mustOk(packWorkbook(here, { folder: stick }));
    expect(second.file).toBe(join(stick, 'Queens 2026 to move 2026-06-01 (2).zip'));
    const state = mustOk(openWorkbook(here, { file: second.file }));
    expect(state.open?.file).toMatch(/Queens 2026 \(2\)\.ripecell$/);
  });

  test('is an ordinary zip that any program can look into', () => {
    const { file } = mustOk(packWorkbook(aComputerAtWork(), { folder: null }));
    const names = Object.keys(unzipSync(Uint8Array.from(readFileSync(file))));
    expect(names.map((name) => name.replace(/\d{4}-\d\d-\d\dT\d{6}/, 'TIME'))).toEqual([
      'workbook/Queens 2026.ripecell',
      'workbook/Queens 2026.ripecell.json',
      'safety-copies/Queens 2026 TIME by-hand.ripecell',
      'safety-copies/Queens 2026 TIME by-hand.ripecell.json',
    ]);
  });

  test('is not made of the demo, of nothing, or into a folder that is not there', () => {
    const lifecycle = aLifecycle();
    expect(packWorkbook(lifecycle, { folder: null })).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
    mustOk(openDemo(lifecycle));
    expect(packWorkbook(lifecycle, { folder: null })).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
    const folder = join(aFolder(), 'gone');
    expect(packWorkbook(aComputerAtWork(), { folder })).toEqual(
      refuse({ kind: 'folder-not-found', field: 'folder', folder }),
    );
  });
});

describe('a broken package is declined and leaves nothing behind', () => {
  const whole = (() => {
    let bytes: Uint8Array | null = null;
    return () => {
      bytes ??= Uint8Array.from(readFileSync(mustOk(packWorkbook(aComputerAtWork(), { folder: null })).file));
      return bytes;
    };
  })();
  const sumOf = (name: string, bytes: Uint8Array) => ({
    [`${name}.json`]: strToU8(JSON.stringify({ sha256: createHash('sha256').update(bytes).digest('hex') })),
  });
  /** A workbook under a name, with the sum of its bytes. */
  const withSum = (name: string, bytes: Uint8Array) => ({ [name]: bytes, ...sumOf(name, bytes) });
  const workbookIn = () => unzipSync(whole())['workbook/Queens 2026.ripecell'] ?? new Uint8Array();

  test.each([
    ['cut short', () => whole().subarray(0, whole().length >> 1)],
    ['cut within its first page', () => whole().subarray(0, 60)],
    ['any other zip', () => zipSync({ 'holiday.jpg': strToU8('sun') })],
    ['a workbook that is none', () => zipSync(withSum('workbook/a.ripecell', strToU8('hello')))],
    ['a workbook without its sum', () => zipSync({ 'workbook/a.ripecell': workbookIn() })],
    [
      'a workbook with one byte changed',
      () =>
        zipSync({
          ...withSum('workbook/a.ripecell', workbookIn()),
          'workbook/a.ripecell': workbookIn().fill(1, 9000, 9001),
        }),
    ],
    [
      'a page overwritten, its sum right',
      () => zipSync(withSum('workbook/a.ripecell', workbookIn().fill(65, 4096, 9000))),
    ],
    [
      'two workbooks',
      () =>
        zipSync({ ...withSum('workbook/a.ripecell', workbookIn()), ...withSum('workbook/b.ripecell', workbookIn()) }),
    ],
    ['a name that climbs out', () => zipSync(withSum('workbook/../../a.ripecell', workbookIn()))],
    ['a name from the root', () => zipSync(withSum('/workbook/a.ripecell', workbookIn()))],
    ['a name with a backslash', () => zipSync(withSum('workbook/..\\a.ripecell', workbookIn()))],
    ['a name that Windows keeps for itself', () => zipSync(withSum('workbook/con.ripecell', workbookIn()))],
    [
      'something beside the workbook',
      () => zipSync({ ...withSum('workbook/a.ripecell', workbookIn()), 'run.exe': strToU8('x') }),
    ],
  ])('%s', (_what, content) => {
    const computer = aComputer();
    const lifecycle = aLifecycle({}, computer);
    const file = join(aFolder(), 'moved.zip');
    writeFileSync(file, content());
    expect(openWorkbook(lifecycle, { file })).toEqual(refuse({ kind: 'package-broken', field: 'file', file }));
    expect(readdirSync(computer.documents)).toEqual([]);
    expect(leftovers(computer.programData)).toEqual([]);
    expect(existsSync(join(computer.programData, 'safety-copies'))).toBe(false);
  });

  test('while the same files with right sums and names are opened', () => {
    const lifecycle = aLifecycle();
    const file = join(aFolder(), 'moved.zip');
    writeFileSync(file, zipSync(withSum('workbook/a.ripecell', workbookIn())));
    expect(mustOk(openWorkbook(lifecycle, { file })).open?.name).toBe('Queens 2026');
  });

  test('and the workbook that is open stays open', () => {
    const lifecycle = aComputerAtWork();
    const folder = aFolder();
    mkdirSync(join(folder, 'stick'));
    const file = join(folder, 'stick', 'moved.zip');
    writeFileSync(file, zipSync({ 'a.txt': strToU8('x') }));
    expect(openWorkbook(lifecycle, { file }).ok).toBe(false);
    expect(lifecycle.keeper.current?.tables.yards.all().length).toBe(1);
  });
});
