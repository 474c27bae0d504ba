import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { connectForReading, connectForWriting } from '../../../main/workbook/connect.ts';
import { aFolder } from '../../builders/workbook-file.ts';

function aFile(): string {
  const file = join(aFolder(), 'w.ripecell');
  const db = new Database(file);
  db.exec('CREATE TABLE note (text)');
  db.close();
  return file;
}

test('from the first moment of writing, nobody else can read or write the file', () => {
  const file = aFile();
  const db = connectForWriting(file);
  const other = new Database(file, { timeout: 0 });
  expect(() => other.prepare('SELECT * FROM note').all()).toThrow('locked');
  expect(() => other.exec('INSERT INTO note VALUES (1)')).toThrow('locked');
  expect(() => connectForWriting(file)).toThrow('locked');
  db.close();
  expect(other.prepare('SELECT * FROM note').all()).toEqual([]);
  other.close();
});

test('a connection for reading cannot write', () => {
  const db = connectForReading(aFile());
  expect(() => db.exec('INSERT INTO note VALUES (1)')).toThrow('readonly');
  db.close();
});

test('neither kind of connection makes a file that is not there', () => {
  const file = join(aFolder(), 'gone.ripecell');
  expect(() => connectForWriting(file)).toThrow('unable to open');
  expect(() => connectForReading(file)).toThrow('unable to open');
});
