/** Another program that tries to write in the workbook whenever it is told to; answers 'locked' or 'open'. */
import Database from 'better-sqlite3';

const [file = ''] = process.argv.slice(2);

process.on('message', () => process.send?.(answer()));
process.on('disconnect', () => process.exit());
process.send?.('ready');

function answer(): string {
  const db = new Database(file, { timeout: 0 });
  try {
    db.exec('BEGIN IMMEDIATE');
    db.exec('ROLLBACK');
    return 'open';
  } catch (error) {
    return String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY') ? 'locked' : String(error);
  } finally {
    db.close();
  }
}
