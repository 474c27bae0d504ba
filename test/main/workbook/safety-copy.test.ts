import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { connectForReading } from '../../../main/workbook/connect.ts';
import { contentDigest } from '../../../main/workbook/content-digest.ts';
import { migrate, readMigrations } from '../../../main/workbook/migrations.ts';
import { makeSafetyCopy, removeUnfinishedCopies } from '../../../main/workbook/safety-copy.ts';
import { MIGRATIONS_FOLDER } from '../../builders/desk.ts';
import { aFolder } from '../../builders/workbook-file.ts';

const NOW = '2026-06-01T18:30:15.000Z';

function aFilledFile(folder: string): Database.Database {
  const db = new Database(join(folder, 'season.ripecell'));
  migrate(db, readMigrations(MIGRATIONS_FOLDER));
  db.exec("INSERT INTO yard VALUES ('a', 'Orchard', NULL), ('b', 'Heath', 'windy')");
  return db;
}

test('a safety copy holds every row and is named after workbook, instant and purpose', () => {
  const folder = aFolder();
  const db = aFilledFile(folder);
  const copy = makeSafetyCopy(db, join(folder, 'copies'), 'by-hand', NOW);
  expect(copy).toBe(join(folder, 'copies', 'season 2026-06-01T183015 by-hand.ripecell'));
  const opened = connectForReading(copy);
  expect(contentDigest(opened)).toBe(contentDigest(db));
  opened.close();
  expect(readdirSync(join(folder, 'copies')).sort()).toEqual([basename(copy), `${basename(copy)}.json`]);
  db.close();
});

test('the note beside a copy holds its date, its counts and the sums by which it is known again', () => {
  const folder = aFolder();
  const db = aFilledFile(folder);
  db.exec("INSERT INTO colony (id, code) VALUES ('h1', 'H1'), ('h2', 'H2')");
  const copy = makeSafetyCopy(db, join(folder, 'copies'), 'close', NOW);
  const note = JSON.parse(readFileSync(`${copy}.json`, 'utf8'));
  expect(note).toMatchObject({
    name: 'season',
    file: join(folder, 'season.ripecell'),
    at: NOW,
    purpose: 'close',
    changeNumber: 0,
    counts: { hives: 2, batches: 0, looks: 0, queens: 0 },
    digest: contentDigest(db),
    bytes: readFileSync(copy).length,
    // From Node's own library, over the bytes as they lie there.
    sha256: createHash('sha256').update(readFileSync(copy)).digest('hex'),
  });
  db.close();
});

test('two copies of the same second do not replace one another', () => {
  const folder = aFolder();
  const db = aFilledFile(folder);
  makeSafetyCopy(db, join(folder, 'copies'), 'by-hand', NOW);
  makeSafetyCopy(db, join(folder, 'copies'), 'by-hand', NOW);
  expect(readdirSync(join(folder, 'copies')).filter((name) => name.endsWith('.ripecell'))).toHaveLength(2);
  db.close();
});

test('a copy that turns out different is thrown away, and the older copy stays', () => {
  const folder = aFolder();
  const db = aFilledFile(folder);
  const good = makeSafetyCopy(db, join(folder, 'copies'), 'by-hand', NOW);
  const before = readFileSync(good);
  // A yard that appears between copying and checking: the digest of the source no longer matches the copy.
  const prepare = db.prepare.bind(db);
  db.prepare = ((sql: string) => {
    const statement = prepare(sql);
    if (!sql.startsWith('VACUUM')) return statement;
    return {
      run: (place: string) => {
        statement.run(place);
        db.exec("INSERT INTO yard VALUES ('c', 'Late', NULL)");
      },
    };
  }) as typeof db.prepare;
  expect(() => makeSafetyCopy(db, join(folder, 'copies'), 'timer', NOW)).toThrow('does not match');
  expect(readdirSync(join(folder, 'copies'))).toEqual([basename(good), `${basename(good)}.json`]);
  expect(readFileSync(good).equals(before)).toBe(true);
  db.close();
});

test('the digest tells a changed value that SQLite finds nothing wrong with', () => {
  const db = aFilledFile(aFolder());
  const before = contentDigest(db);
  db.exec("UPDATE yard SET note = 'calm' WHERE id = 'b'");
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(contentDigest(db)).not.toBe(before);
  db.exec("UPDATE yard SET note = 'windy' WHERE id = 'b'");
  expect(contentDigest(db)).toBe(before);
  db.close();
});

test('the digest does not depend on the order in which rows were written', () => {
  const [one, other] = [new Database(':memory:'), new Database(':memory:')];
  for (const db of [one, other]) migrate(db, readMigrations(MIGRATIONS_FOLDER));
  one.exec("INSERT INTO yard VALUES ('a', 'A', NULL), ('b', 'B', NULL)");
  other.exec("INSERT INTO yard VALUES ('b', 'B', NULL), ('a', 'A', NULL)");
  expect(contentDigest(one)).toBe(contentDigest(other));
});

test('copies cut short are cleared away, finished ones are not', () => {
  const folder = aFolder();
  for (const name of [
    'a.ripecell',
    'a.ripecell.json',
    'b.ripecell.part',
    'b.ripecell.part-journal',
    'b.ripecell.json.part',
    'c.ripecell.json',
  ])
    writeFileSync(join(folder, name), '');
  removeUnfinishedCopies(folder);
  expect(readdirSync(folder).sort()).toEqual(['a.ripecell', 'a.ripecell.json']);
});
