/**
 * Saves without pause, on a drive whose power is about to be cut. Arguments: workbook, 'flushed', 'unflushed' or 'never'.
 * Prints `A <id>` once a save is acknowledged. The unflushed manner is SQLite left to itself (synchronous = NORMAL in
 * write-ahead-log mode): the control that must lose. 'never' is the same with synchronous = OFF.
 */
import { writeSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aYard } from '../builders/yard.ts';
import { settingIn } from './sample-workbook.ts';

const [file = '', manner = ''] = process.argv.slice(2);
const save = manner === 'flushed' ? flushedSaver() : unflushedSaver();
for (let number = 1; ; number += 1) {
  save(`y${number}`);
  writeSync(1, `A y${number}\n`);
}

function flushedSaver(): (id: string) => void {
  const opened = openWorkbookFile(file, settingIn(dirname(file)));
  if (!opened.ok) throw new Error(opened.refusal.kind);
  return (id) => {
    const saved = opened.value.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id, name: id }))));
    if (!saved.ok) throw new Error(saved.refusal.kind);
  };
}

function unflushedSaver(): (id: string) => void {
  const db = new Database(file);
  db.pragma('journal_mode = WAL');
  db.pragma(`synchronous = ${manner === 'never' ? 'OFF' : 'NORMAL'}`);
  const insert = db.prepare('INSERT INTO yard VALUES (?, ?, NULL)');
  return (id) => void insert.run(id, id);
}
