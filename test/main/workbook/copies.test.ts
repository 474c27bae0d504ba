import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { contentDigest } from '../../../main/workbook/content-digest.ts';
import { ok, refuse } from '../../../shared/kernel/result.ts';
import { addYard, aKeeperWithClock, safetyFolderOf, spoil, yardsIn } from '../../builders/copies.ts';
import { mustOk } from '../../builders/desk.ts';
import { aFolder } from '../../builders/workbook-file.ts';
import { aYard } from '../../builders/yard.ts';

const MINUTE = 60_000;

describe('when a copy is made', () => {
  test('at closing, if anything was changed since the last', () => {
    const { keeper, start } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    keeper.stop();
    const again = start();
    expect(again.copies.list().copies).toEqual([]);
    addYard(again.current, 'a');
    again.stop();
    const third = start();
    expect(third.copies.list().copies).toMatchObject([{ purpose: 'close', checked: true, place: 'here' }]);
    third.stop();
    expect(start().copies.list().copies).toHaveLength(1);
  });

  test('half an hour after the last, once nobody has typed for twenty seconds', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    const made = () => {
      keeper.copies.makeIfDue();
      return keeper.copies.list().copies.length;
    };
    clock.after = 29 * MINUTE;
    addYard(keeper.current, 'a');
    expect(made()).toBe(0);
    clock.after = 31 * MINUTE;
    addYard(keeper.current, 'b');
    expect(made()).toBe(0);
    clock.after += 20_000;
    expect(made()).toBe(1);
    clock.after += 120 * MINUTE;
    expect(made()).toBe(1);
    addYard(keeper.current, 'c');
    expect(made()).toBe(1);
    clock.after += 20_000;
    expect(made()).toBe(2);
    expect(keeper.copies.list().copies[0]).toMatchObject({ purpose: 'timer' });
  });

  test('typing without a pause puts it off for 45 minutes, no longer', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    const minutesUntilCopy = () => {
      for (let turn = 0; turn < 1000; turn += 1) {
        clock.after += 15_000;
        addYard(keeper.current, `y${turn}`);
        keeper.copies.makeIfDue();
        if (keeper.copies.list().copies.length > 0) return clock.after / MINUTE;
      }
      return null;
    };
    expect(minutesUntilCopy()).toBe(45.25);
  });

  test('a clock set back does not keep copies from being made', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    clock.after = -400 * MINUTE;
    addYard(keeper.current, 'a');
    keeper.copies.makeIfDue();
    clock.after += 31 * MINUTE;
    keeper.copies.makeIfDue();
    expect(keeper.copies.list().copies).toHaveLength(1);
  });

  test('never of the demo', () => {
    const { keeper } = aKeeperWithClock();
    mustOk(keeper.openDemo('0.1.0', (demo) => addYard(demo, 'made-up')));
    expect(keeper.copies.make('by-hand')).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
    expect(keeper.copies.list().of).toBeNull();
  });
});

describe('the list', () => {
  test('shows the newest first, with date, purpose and counts', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    addYard(keeper.current, 'a');
    mustOk(keeper.copies.make('by-hand'));
    clock.after = MINUTE;
    mustOk(keeper.copies.make('before-import'));
    expect(keeper.copies.list()).toMatchObject({
      of: { name: 'Queens' },
      hold: null,
      secondPlace: null,
      copies: [
        { at: '2026-06-01T12:01:00.000Z', purpose: 'before-import', checked: true },
        { at: '2026-06-01T12:00:00.000Z', purpose: 'by-hand', counts: { hives: 0, batches: 0, looks: 0, queens: 0 } },
      ],
    });
  });

  test('a copy whose size changed, or whose note is lost, is not called checked', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    const first = mustOk(keeper.copies.make('by-hand'));
    clock.after = MINUTE;
    const second = mustOk(keeper.copies.make('by-hand'));
    truncateSync(first.file, 5000);
    unlinkSync(`${second.file}.json`);
    expect(keeper.copies.list().copies).toMatchObject([
      { checked: false, counts: null, at: '2026-06-01T12:01:00.000Z' },
      { checked: false, at: '2026-06-01T12:00:00.000Z' },
    ]);
  });

  test('a workbook sees its own copies only, and keeps them when it is moved', () => {
    const { keeper, computer } = aKeeperWithClock();
    const elsewhere = join(computer.documents, 'elsewhere');
    mkdirSync(elsewhere);
    const { file } = mustOk(keeper.begin('Queens', null));
    mustOk(keeper.copies.make('by-hand'));
    mustOk(keeper.begin('Queens', elsewhere));
    expect(keeper.copies.list().copies).toEqual([]);
    keeper.stop();
    renameSync(file, join(computer.documents, 'Moved.ripecell'));
    mustOk(keeper.open(join(computer.documents, 'Moved.ripecell')));
    expect(keeper.copies.list().copies).toHaveLength(1);
  });
});

describe('looking into a copy', () => {
  test('shows it for reading; the workbook stays open and locked behind it, and is back after leaving', () => {
    const { keeper, computer } = aKeeperWithClock();
    const workbook = mustOk(keeper.begin('Queens', null));
    addYard(workbook, 'a');
    const copy = mustOk(keeper.copies.make('by-hand'));
    const before = readFileSync(copy.file);
    addYard(workbook, 'b');
    const looked = mustOk(keeper.copies.look(copy.id));
    expect(keeper.current).toBe(looked);
    expect(looked).toMatchObject({ readOnly: true, readOnlyBecause: 'copy' });
    expect(yardsIn(looked)).toEqual(['a']);
    expect(looked.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id: 'c' }))))).toEqual(
      refuse({ kind: 'not-saved', reason: 'read-only' }),
    );
    expect(keeper.copies.lookingAt?.id).toBe(copy.id);
    expect(() => new Database(workbook.file, { timeout: 0 }).exec('SELECT * FROM yard')).toThrow('locked');
    keeper.close();
    expect(keeper.current).toBe(workbook);
    expect(yardsIn(workbook)).toEqual(['a', 'b']);
    expect(readFileSync(copy.file).equals(before)).toBe(true);
    expect(readdirSync(join(computer.programData, 'looking'))).toEqual([]);
  });

  test('a spoilt copy is refused, and what was open stays open', () => {
    const { keeper } = aKeeperWithClock();
    const workbook = mustOk(keeper.begin('Queens', null));
    const copy = mustOk(keeper.copies.make('by-hand'));
    const bytes = readFileSync(copy.file);
    bytes[bytes.length - 5] = (bytes.at(-5) ?? 0) ^ 1;
    writeFileSync(copy.file, bytes);
    expect(keeper.copies.look(copy.id)).toEqual(refuse({ kind: 'copy-not-sound', field: 'copy', file: copy.file }));
    unlinkSync(`${copy.file}.json`);
    spoil(copy.file);
    expect(keeper.copies.look(copy.id)).toEqual(refuse({ kind: 'copy-not-sound', field: 'copy', file: copy.file }));
    expect(keeper.current).toBe(workbook);
    expect(keeper.copies.look('here:no such copy')).toEqual(refuse({ kind: 'copy-not-found', field: 'copy' }));
  });

  test('what an interrupted look left behind is cleared away at the next start', () => {
    const { computer, start } = aKeeperWithClock();
    mkdirSync(join(computer.programData, 'looking', 'copy-x'), { recursive: true });
    start();
    expect(readdirSync(join(computer.programData, 'looking'))).toEqual([]);
  });
});

describe('going back to a copy', () => {
  test('puts it in the workbook’s place; the workbook as it was stays beside it and among the copies', () => {
    const { keeper, clock } = aKeeperWithClock();
    const { file } = mustOk(keeper.begin('Queens', null));
    addYard(keeper.current, 'a');
    const copy = mustOk(keeper.copies.make('by-hand'));
    addYard(keeper.current, 'b');
    clock.after = MINUTE;
    const { keptAs } = mustOk(keeper.copies.restore(copy.id, null));
    expect(keeper.current).toMatchObject({ file, readOnly: false });
    expect(yardsIn(keeper.current)).toEqual(['a']);
    expect(keptAs).toBe(join(dirname(file), 'Queens until 2026-06-01T120100.ripecell'));
    expect(rowsIn(keptAs, 'yard')).toBe(2);
    expect(readdirSync(dirname(file)).sort()).toEqual([
      basename(String(keptAs)),
      basename(file),
      `${basename(file)}-wal`,
    ]);
    const [newest] = keeper.copies.list().copies;
    expect(newest).toMatchObject({ purpose: 'before-restore', checked: true });
    mustOk(keeper.copies.restore(String(newest?.id), null));
    expect(yardsIn(keeper.current)).toEqual(['a', 'b']);
  });

  test('every row of the copy is there afterwards, by the digest', () => {
    const { keeper } = aKeeperWithClock();
    const { file } = mustOk(keeper.begin('Queens', null));
    for (let yard = 0; yard < 30; yard += 1) addYard(keeper.current, `y${yard}`);
    const copy = mustOk(keeper.copies.make('by-hand'));
    const expected = digestOf(copy.file);
    addYard(keeper.current, 'later');
    mustOk(keeper.copies.restore(copy.id, null));
    keeper.stop();
    expect(digestOf(file)).toBe(expected);
  });

  test('no old copy goes afterwards until the person says go on', () => {
    const { keeper, clock } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    addYard(keeper.current, 'a');
    const many = () => {
      for (let copy = 0; copy < 14; copy += 1) {
        clock.after += 1000;
        mustOk(keeper.copies.make('timer'));
      }
      return keeper.copies.list().copies.filter(({ purpose }) => purpose === 'timer').length;
    };
    expect(many()).toBe(10);
    mustOk(keeper.copies.restore(String(keeper.copies.list().copies[0]?.id), null));
    expect(keeper.copies.list().hold).toBe('restored');
    expect(many()).toBe(24);
    keeper.copies.release();
    expect(keeper.copies.list().hold).toBeNull();
    expect(many()).toBeLessThanOrEqual(11);
  });

  test('a damaged workbook is kept with its log, and its copies are offered', () => {
    const { keeper, start } = aKeeperWithClock();
    const { file } = mustOk(keeper.begin('Queens', null));
    addYard(keeper.current, 'a');
    keeper.stop();
    truncateSync(file, 6000);
    writeFileSync(`${file}-wal`, 'a log of the damaged file');
    const damaged = readFileSync(file);
    const again = start();
    expect(again.current).toBeNull();
    expect(again.known().notOpened).toMatchObject({ name: 'Queens', file, refusal: { kind: 'workbook-damaged' } });
    const [copy] = again.copies.list().copies;
    const { keptAs } = mustOk(again.copies.restore(String(copy?.id), null));
    expect(yardsIn(again.current)).toEqual(['a']);
    expect(readFileSync(String(keptAs)).equals(damaged)).toBe(true);
    expect(readFileSync(`${keptAs}-wal`, 'utf8')).toBe('a log of the damaged file');
    expect(again.known().notOpened).toBeNull();
  });

  test('a missing workbook comes back where it was, or in another folder', () => {
    const { keeper, start } = aKeeperWithClock();
    const folder = aFolder();
    mkdirSync(join(folder, 'stick'));
    mustOk(keeper.begin('Queens', join(folder, 'stick')));
    addYard(keeper.current, 'a');
    keeper.stop();
    rmSync(join(folder, 'stick'), { recursive: true });
    const again = start();
    const id = String(again.copies.list().copies[0]?.id);
    expect(again.known().missing?.name).toBe('Queens');
    expect(again.copies.restore(id, null)).toEqual(
      refuse({ kind: 'folder-not-found', field: 'folder', folder: join(folder, 'stick') }),
    );
    expect(mustOk(again.copies.restore(id, folder))).toEqual({ keptAs: null });
    expect(again.current?.file).toBe(join(folder, 'Queens.ripecell'));
    expect(yardsIn(again.current)).toEqual(['a']);
  });

  test('is refused while another program has the workbook', () => {
    const { keeper, start } = aKeeperWithClock();
    const { file } = mustOk(keeper.begin('Queens', null));
    addYard(keeper.current, 'a');
    keeper.stop();
    const other = new Database(file);
    other.pragma('locking_mode = EXCLUSIVE');
    other.exec('BEGIN EXCLUSIVE');
    const again = start();
    expect(again.copies.restore(String(again.copies.list().copies[0]?.id), null)).toEqual(
      refuse({ kind: 'workbook-open-elsewhere', field: 'file', file }),
    );
    other.close();
    expect(readdirSync(dirname(file))).toEqual([basename(file)]);
  });
});

describe('the second place', () => {
  test('gets the newest copy at once and each later one, with its note', () => {
    const { keeper, clock } = aKeeperWithClock();
    const stick = aFolder();
    mustOk(keeper.begin('Queens', null));
    const first = mustOk(keeper.copies.make('by-hand'));
    mustOk(keeper.copies.setSecondPlace(stick));
    expect(readdirSync(stick).sort()).toEqual([basename(first.file), `${basename(first.file)}.json`]);
    clock.after = MINUTE;
    const later = mustOk(keeper.copies.make('timer'));
    expect(readFileSync(join(stick, basename(later.file))).equals(readFileSync(later.file))).toBe(true);
    expect(keeper.copies.list()).toMatchObject({
      secondPlace: { folder: stick, reachable: true, newestAt: '2026-06-01T12:01:00.000Z' },
    });
    expect(keeper.copies.list().copies.map(({ place }) => place)).toEqual(['second', 'here', 'second', 'here']);
    unlinkSync(later.file);
    expect(mustOk(keeper.copies.look(`second:${basename(later.file)}`)).name).toBe('Queens');
  });

  test('that is not plugged in stops nothing and is said to be missing', () => {
    const { keeper } = aKeeperWithClock();
    const folder = aFolder();
    const stick = join(folder, 'stick');
    mkdirSync(stick);
    mustOk(keeper.begin('Queens', null));
    mustOk(keeper.copies.setSecondPlace(stick));
    rmSync(stick, { recursive: true });
    expect(mustOk(keeper.copies.make('by-hand')).checked).toBe(true);
    expect(keeper.copies.list().secondPlace).toEqual({ folder: stick, reachable: false, newestAt: null });
    expect(existsSync(stick)).toBe(false);
    mustOk(keeper.copies.setSecondPlace(null));
    expect(keeper.copies.list().secondPlace).toBeNull();
  });

  test('is not the folder of the workbook, nor of the first copies, nor one that is missing', () => {
    const { keeper, computer } = aKeeperWithClock();
    mustOk(keeper.begin('Queens', null));
    mustOk(keeper.copies.make('by-hand'));
    for (const folder of [computer.documents, safetyFolderOf(computer)]) {
      expect(keeper.copies.setSecondPlace(folder)).toEqual(
        refuse({ kind: 'second-place-same', field: 'folder', folder }),
      );
    }
    const folder = join(computer.documents, 'gone');
    expect(keeper.copies.setSecondPlace(folder)).toEqual(refuse({ kind: 'folder-not-found', field: 'folder', folder }));
    expect(keeper.copies.list().secondPlace).toBeNull();
  });
});

test('when a fifth of all records is gone since the last copy, old copies stay until the person has looked', () => {
  const { keeper, clock } = aKeeperWithClock();
  mustOk(keeper.begin('Queens', null));
  const hive = (id: string) => ({
    ...{ id, code: id, name: null, yardId: null, place: null, motherLine: null, note: null, endedOn: null },
  });
  const change = (work: (id: string) => void, ids: readonly string[]) => {
    for (const id of ids) work(id);
    clock.after += MINUTE;
    mustOk(keeper.copies.make('timer'));
    return keeper.copies.list().hold;
  };
  const add = (id: string) =>
    void mustOk(
      keeper.current?.change({ did: 'other' }, ({ colonies }) => ok(colonies.insert(hive(id)))) ?? ok(undefined),
    );
  const remove = (id: string) =>
    void mustOk(keeper.current?.change({ did: 'other' }, ({ colonies }) => ok(colonies.remove(id))) ?? ok(undefined));
  const ids = Array.from({ length: 20 }, (_, hiveNumber) => `h${hiveNumber}`);
  expect(change(add, ids)).toBeNull();
  expect(change(remove, ids.slice(0, 4))).toBeNull();
  expect(change(remove, ids.slice(4, 8))).toBe('counts-fell');
  keeper.copies.release();
  expect(change(add, ['new'])).toBeNull();
});

test('copies are for the owner’s eyes only', { skip: process.platform === 'win32' }, () => {
  const { keeper, computer } = aKeeperWithClock();
  mustOk(keeper.begin('Queens', null));
  const copy = mustOk(keeper.copies.make('by-hand'));
  expect([statSync(copy.file).mode & 0o777, statSync(`${copy.file}.json`).mode & 0o777]).toEqual([0o600, 0o600]);
  expect(statSync(safetyFolderOf(computer)).mode & 0o777).toBe(0o700);
});

function rowsIn(file: string | null, table: string): number {
  const db = new Database(String(file), { readonly: true });
  const rows = Number(db.prepare(`SELECT count(*) FROM ${table}`).pluck().get());
  db.close();
  return rows;
}

function digestOf(file: string): string {
  const db = new Database(file, { readonly: true });
  const digest = contentDigest(db);
  db.close();
  return digest;
}
