import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
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
  const start = (migrations = readMigrations(MIGRATIONS_FOLDER)): Keeper => {
    const keeper = startKeeper({
      documents,
      programData,
      migrations,
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

describe('the practice workbook', () => {
  const build = (name: string) => (practice: Workbook) => addYard(practice, name);
  const addYard = (workbook: Workbook, name: string) => {
    mustOk(workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id: name, name })))));
  };
  const neverBuild = () => {
    throw new Error('built');
  };
  const yardsOf = (workbook: Workbook | null) => workbook?.tables.yards.all().map(({ name }) => name);

  test('keeps what was typed, also for another version of the program, until it is set back to its start', () => {
    const { programData, start } = aComputer();
    const keeper = start();
    const { file: own } = mustOk(keeper.begin('Queens', null));
    const practice = mustOk(keeper.openPractice('0.1.0', build('Start')));
    expect(practice).toMatchObject({ kind: 'practice', file: join(programData, 'practice', 'practice.ripecell') });
    addYard(practice, 'Typed');
    keeper.drafts.keep(practice.file, 'row', 'half');
    keeper.stop();
    const next = start();
    expect(next.current?.file).toBe(own);
    expect(yardsOf(mustOk(next.openPractice('0.2.0', neverBuild)))).toEqual(['Start', 'Typed']);
    const reset = mustOk(next.resetPractice('0.2.0', build('Start again')));
    expect(yardsOf(reset)).toEqual(['Start again']);
    expect(next.current).toBe(reset);
    expect(next.drafts.of(practice.file)).toEqual({});
    expect(mustOk(next.openPractice('0.2.0', neverBuild))).toBe(reset);
  });

  test('setting back is refused while another workbook is open, and touches neither of the two', () => {
    const { programData, start } = aComputer();
    const keeper = start();
    const place = join(programData, 'practice', 'practice.ripecell');
    addYard(mustOk(keeper.openPractice('0.1.0', build('Start'))), 'Typed');
    const real = mustOk(keeper.begin('Queens', null));
    addYard(real, 'Own');
    const practiceBytes = readFileSync(place);
    expect(keeper.resetPractice('0.1.0', neverBuild)).toEqual(refuse({ kind: 'not-practice' }));
    expect(keeper.current).toBe(real);
    expect(yardsOf(real)).toEqual(['Own']);
    expect(readFileSync(place).equals(practiceBytes)).toBe(true);
    keeper.close();
    expect(keeper.resetPractice('0.1.0', neverBuild)).toEqual(refuse({ kind: 'not-practice' }));
    mustOk(keeper.openDemo('0.1.0', build('Demo')));
    expect(keeper.resetPractice('0.1.0', neverBuild)).toEqual(refuse({ kind: 'not-practice' }));
    expect(yardsOf(keeper.current)).toEqual(['Demo']);
  });

  test('a copy of it in another folder is somebody’s own file and is not set back', () => {
    const { documents, start } = aComputer();
    const keeper = start();
    const { file } = mustOk(keeper.openPractice('0.1.0', build('Start')));
    keeper.close();
    const copied = join(documents, 'Lesson.ripecell');
    copyFileSync(file, copied);
    expect(mustOk(keeper.open(copied)).kind).toBe('practice');
    expect(keeper.resetPractice('0.1.0', neverBuild)).toEqual(refuse({ kind: 'not-practice' }));
    expect(yardsOf(keeper.current)).toEqual(['Start']);
  });

  test.each(['practice', 'demo'] as const)('somebody’s own workbook under the name of the %s is set aside', (kind) => {
    const { programData, start } = aComputer();
    const keeper = start();
    const own = mustOk(keeper.begin('Queens', null));
    addYard(own, 'Own');
    keeper.close();
    const folder = join(programData, kind);
    mkdirSync(folder);
    renameSync(own.file, join(folder, `${kind}.ripecell`));
    const opened =
      kind === 'demo' ? keeper.openDemo('0.1.0', build('Start')) : keeper.openPractice('0.1.0', build('Start'));
    expect(yardsOf(mustOk(opened))).toEqual(['Start']);
    expect(yardsOf(mustOk(keeper.open(join(folder, `${kind} set aside.ripecell`))))).toEqual(['Own']);
  });

  test('cut short while being set back it stays as it was', () => {
    const { start } = aComputer();
    const keeper = start();
    addYard(mustOk(keeper.openPractice('0.1.0', build('Start'))), 'Typed');
    expect(() =>
      keeper.resetPractice('0.1.0', (practice) => {
        build('Half')(practice);
        throw new Error('power cut');
      }),
    ).toThrow('power cut');
    expect(yardsOf(keeper.current)).toEqual(['Start', 'Typed']);
  });

  test('it makes no safety copies and none of a real workbook go because of it', () => {
    const { programData, start } = aComputer();
    const keeper = start();
    const real = mustOk(keeper.begin('Queens', null));
    addYard(real, 'Own');
    mustOk(keeper.copies.make('by-hand'));
    const copies = () => readdirSync(join(programData, 'safety-copies'), { recursive: true }).sort();
    const before = copies();
    addYard(mustOk(keeper.openPractice('0.1.0', build('Start'))), 'Typed');
    expect(keeper.copies.make('by-hand')).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
    keeper.copies.makeIfDue();
    mustOk(keeper.resetPractice('0.1.0', build('Start')));
    keeper.stop();
    expect(copies()).toEqual(before);
  });

  test('a copy made before a change of format lies beside it, not among those of real workbooks', () => {
    const { programData, start } = aComputer();
    const all = readMigrations(MIGRATIONS_FOLDER);
    const older = start(all);
    mustOk(older.openPractice('0.1.0', () => {}));
    older.stop();
    const later = { number: all.length + 1, name: 'later', sql: () => 'CREATE TABLE later (id TEXT) STRICT' };
    const newer = [...all, later];
    mustOk(start(newer).openPractice('0.2.0', neverBuild));
    expect(readdirSync(join(programData, 'practice', 'safety-copies')).join()).toContain('before-format');
    expect(existsSync(join(programData, 'safety-copies'))).toBe(false);
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
