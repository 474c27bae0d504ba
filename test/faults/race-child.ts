/** Opens and closes a workbook when told to. Messages: 'open' or 'open-unlocked' (the control), then 'close'. */
import Database from 'better-sqlite3';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';

const [file = '', migrations = '', safetyFolder = ''] = process.argv.slice(2);
let close = () => {};

process.on('message', (message) => {
  if (message === 'close') {
    close();
    close = () => {};
    process.send?.('closed');
    return;
  }
  process.send?.(message === 'open' ? openLocked() : openUnlocked());
});
process.on('disconnect', () => process.exit());
process.send?.('ready');

function openLocked(): string {
  const opened = openWorkbookFile(file, {
    migrations: readMigrations(migrations),
    safetyFolder,
    now: () => new Date().toISOString(),
  });
  if (!opened.ok) return opened.refusal.kind;
  close = () => opened.value.close();
  return 'opened';
}

/** What any program does that does not think of a second one. */
function openUnlocked(): string {
  const db = new Database(file);
  db.prepare('SELECT count(*) FROM yard').get();
  close = () => db.close();
  return 'opened';
}
