import { existsSync, mkdirSync, readFileSync, renameSync, rmdirSync, unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { startKeeper } from '../../../main/workbook/keeper.ts';
import { readMigrations } from '../../../main/workbook/migrations.ts';
import type { Keeper, Workbook } from '../../../main/workbook/workbook.ts';
import { ok, refuse } from '../../../shared/kernel/result.ts';
import { MIGRATIONS_FOLDER, mustOk } from '../../builders/desk.ts';
import { aFolder } from '../../builders/workbook-file.ts';
import { aYard } from '../../builders/yard.ts';

/** A computer with an empty documents folder; `start` is one start of the program on it. */
function aComputer() {
  const folder = aFolder();
  const documents = join(folder, 'documents');
  const programData = join(folder, 'program');
  mkdirSync(documents);
  const start = (): Keeper => {
    const keeper = startKeeper({
      documents,
      programData,
      migrations: readMigrations(MIGRATIONS_FOLDER),
      now: () => '2026-06-01T18:00:00.000Z',
      report: (error) => {
        throw error;
      },
    });
    onTestFinished(() => keeper.stop());
    return keeper;
  };
  return { documents, programData, start };
}

describe('which workbook is open', () => {
  test('on a new computer none is, and the documents folder is offered', () => {
    const { documents, start } = aComputer();
    const keeper = start();
    expect(keeper.current).toBeNull();
    expect(keeper.known()).toEqual({ missing: null, notOpened: null, recent: [], usualFolder: documents });
  });

  test('a workbook begun is open, lies in the documents folder, and opens again at the next start', () => {
    const { documents, start } = aComputer();
    const first = start();
    const begun = mustOk(first.begin('Queens 2026', null));
    expect(begun.file).toBe(join(documents, 'Queens 2026.ripecell'));
    first.stop();
    const second = start();
    expect(second.current).toMatchObject({ name: 'Queens 2026', file: begun.file });
  });

  test('after the person has closed it, the next start opens none but offers it', () => {
    const { start } = aComputer();
    const first = start();
    const { file } = mustOk(first.begin('Queens', null));
    first.close();
    const second = start();
    expect(second.current).toBeNull();
    expect(second.known()).toMatchObject({ missing: null, recent: [{ name: 'Queens', file, found: true }] });
  });

  test('a workbook that is gone is reported missing and no blank one takes its place', () => {
    const { start } = aComputer();
    const first = start();
    const { file } = mustOk(first.begin('Queens', null));
    first.stop();
    renameSync(file, `${file}.moved`);
    const second = start();
    expect(second.current).toBeNull();
    expect(second.known()).toMatchObject({ missing: { name: 'Queens', file }, recent: [{ found: false }] });
    expect(existsSync(file)).toBe(false);
  });

  test('a name in use is refused, and the workbook open until then stays open', () => {
    const { documents, start } = aComputer();
    const keeper = start();
    const first = mustOk(keeper.begin('Queens', null));
    expect(keeper.begin('Queens', null)).toEqual(
      refuse({ kind: 'file-exists', field: 'name', file: join(documents, 'Queens.ripecell') }),
    );
    expect(keeper.current).toBe(first);
    expect(first.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard()))).ok).toBe(true);
  });

  test('a documents folder that is missing is made, and one that cannot be made is a refusal', () => {
    const { documents, start } = aComputer();
    const keeper = start();
    rmdirSync(documents);
    writeFileSync(documents, 'a file where the folder should be');
    expect(keeper.begin('Queens', null)).toEqual(
      refuse({ kind: 'folder-not-found', field: 'folder', folder: documents }),
    );
    unlinkSync(documents);
    expect(mustOk(keeper.begin('Queens', null)).file).toBe(join(documents, 'Queens.ripecell'));
  });

  test('opening another closes the one before, and opening the same one again changes nothing', () => {
    const { start } = aComputer();
    const keeper = start();
    const first = mustOk(keeper.begin('First', null));
    const second = mustOk(keeper.begin('Second', null));
    expect(mustOk(keeper.open(second.file))).toBe(second);
    expect(mustOk(keeper.open(first.file)).name).toBe('First');
    expect(keeper.known().recent.map(({ name }) => name)).toEqual(['First', 'Second']);
  });

  test('a memory that cannot be read counts as empty', () => {
    const { programData, start } = aComputer();
    mkdirSync(programData);
    writeFileSync(join(programData, 'known-workbooks.json'), '{"last": 7');
    expect(start().known()).toMatchObject({ missing: null, recent: [] });
  });
});

describe('the demo', () => {
  const build = (name: string) => (demo: Workbook) => {
    mustOk(demo.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ name })))));
  };
  const neverBuild = () => {
    throw new Error('built again');
  };

  test('is built once and is a file of its own that is not taken for the last workbook', () => {
    const { programData, start } = aComputer();
    const first = start();
    const { file } = mustOk(first.begin('Queens', null));
    const demo = mustOk(first.openDemo('0.1.0', build('Demo')));
    expect(demo).toMatchObject({ kind: 'demo', file: join(programData, 'demo', 'demo.ripecell') });
    first.stop();
    const second = start();
    expect(second.current?.file).toBe(file);
    expect(mustOk(second.openDemo('0.1.0', neverBuild)).tables.yards.all()).toHaveLength(1);
  });

  test('is built anew for another version of the program, and when it is damaged', () => {
    const { start } = aComputer();
    const keeper = start();
    const { file } = mustOk(keeper.openDemo('0.1.0', build('Old')));
    keeper.close();
    expect(mustOk(keeper.openDemo('0.2.0', build('New'))).tables.yards.all()[0]?.name).toBe('New');
    keeper.close();
    writeFileSync(file, 'not a demo any more');
    expect(mustOk(keeper.openDemo('0.2.0', build('Again'))).tables.yards.all()[0]?.name).toBe('Again');
  });

  test('cut short while being built is not taken for a whole one', () => {
    const { programData, start } = aComputer();
    const keeper = start();
    expect(() =>
      keeper.openDemo('0.1.0', (demo) => {
        build('Half')(demo);
        throw new Error('power cut');
      }),
    ).toThrow('power cut');
    expect(existsSync(join(programData, 'demo', 'demo.ripecell'))).toBe(false);
    writeFileSync(join(programData, 'demo', 'demo.ripecell.new'), 'half a file');
    expect(mustOk(keeper.openDemo('0.1.0', build('Whole'))).tables.yards.all()[0]?.name).toBe('Whole');
  });
});

test('the memory of workbooks is one readable file', () => {
  const { programData, start } = aComputer();
  const keeper = start();
  const { file } = mustOk(keeper.begin('Queens', null));
  const memory = join(programData, 'known-workbooks.json');
  expect(JSON.parse(readFileSync(memory, 'utf8'))).toEqual({
    last: { name: 'Queens', file },
    recent: [{ name: 'Queens', file }],
  });
  unlinkSync(memory);
  expect(keeper.known().recent).toEqual([]);
});
