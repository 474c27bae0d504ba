import { readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { addYard, aKeeperWithClock, yardsIn } from '../../builders/copies.ts';
import { mustOk } from '../../builders/desk.ts';

const MINUTE = 60_000;

describe('the thorough look after opening', () => {
  function closedWithYards() {
    const house = aKeeperWithClock();
    const { file } = mustOk(house.keeper.begin('Queens', null));
    addYard(house.keeper.current, 'a');
    house.keeper.stop();
    return { ...house, file };
  }

  test('finds nothing wrong with a file that is as it was, also after more was typed', async () => {
    const { start } = closedWithYards();
    const keeper = start();
    await keeper.copies.checkIfDue();
    addYard(keeper.current, 'b');
    await keeper.copies.checkIfDue();
    expect(keeper.copies.harm).toBeNull();
    expect(keeper.copies.list().hold).toBeNull();
  });

  test('finds a value that was changed from outside, which opens without complaint, and keeps old copies', async () => {
    const { start, file } = closedWithYards();
    const bytes = readFileSync(file);
    // In the journal's own text, where no index and no check would miss it.
    const at = bytes.indexOf('"Yard a"');
    bytes[at + 6] = 'b'.charCodeAt(0);
    writeFileSync(file, bytes);
    const keeper = start();
    expect(yardsIn(keeper.current)).toEqual(['a']);
    expect(keeper.copies.harm).toBeNull();
    await keeper.copies.checkIfDue();
    expect(keeper.copies.harm).toEqual({ kind: 'changed', copyAt: '2026-06-01T12:00:00.000Z' });
    expect(keeper.copies.list().hold).toBe('harmed');
    keeper.copies.release();
    await keeper.copies.checkIfDue();
    expect(keeper.copies.list().hold).toBeNull();
    mustOk(keeper.copies.restore(String(keeper.copies.list().copies[0]?.id), null));
    expect(keeper.copies.harm).toBeNull();
  });

  test('calls a broken index damage only when it is found twice', async () => {
    const { start, file } = closedWithYards();
    const db = new Database(file);
    const root = Number(
      db.prepare("SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_yard_2'").pluck().get(),
    );
    db.close();
    const bytes = readFileSync(file);
    bytes.fill(0, (root - 1) * 4096 + 8, root * 4096);
    writeFileSync(file, bytes);
    const keeper = start();
    await keeper.copies.checkIfDue();
    expect(keeper.copies.harm).toBeNull();
    await keeper.copies.checkIfDue();
    expect(keeper.copies.harm?.kind).toBe('damaged');
  });

  test('does not mistake another state with the same number of changes for a changed file', async () => {
    const { start, clock } = closedWithYards();
    const keeper = start();
    const first = String(keeper.copies.list().copies[0]?.id);
    addYard(keeper.current, 'b');
    clock.after += MINUTE;
    mustOk(keeper.copies.make('by-hand'));
    mustOk(keeper.copies.restore(first, null));
    clock.after += MINUTE;
    addYard(keeper.current, 'c');
    await keeper.copies.checkIfDue();
    expect(keeper.copies.harm).toBeNull();
  });
});
