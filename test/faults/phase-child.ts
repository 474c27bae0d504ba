/**
 * Does one thing that must be old or new but never half, and is killed in the middle of it.
 * Arguments: phase, workbook, migrations folder, safety folder. Prints `S` as it starts and `E` when it is through.
 */
import { writeSync } from 'node:fs';
import { flushCompileCache } from 'node:module';
import { dirname } from 'node:path';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { startKeeper } from '../../main/workbook/keeper.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';

// A killed process leaves no cache behind; with one the next starts in half the time.
flushCompileCache();
const [phase = '', file = '', migrations = '', safetyFolder = ''] = process.argv.slice(2);
const setting: OpenSetting = {
  migrations: readMigrations(migrations),
  safetyFolder,
  now: () => new Date().toISOString(),
};
/** As phases.fault.ts expects it. */
const IMPORTED_ROWS = 4000;
const say = (line: string) => writeSync(1, `${line}\n`);

function opened(): Workbook {
  const result = openWorkbookFile(file, setting);
  if (!result.ok) throw new Error(result.refusal.kind);
  return result.value;
}

switch (phase) {
  case 'create':
    say('S');
    createWorkbookFile({ file, name: 'Phase', kind: 'real' }, setting);
    say('E');
    break;
  case 'upgrade':
    say('S');
    openWorkbookFile(file, setting);
    say('E');
    break;
  case 'close': {
    const workbook = opened();
    const saved = workbook.change({ did: 'other' }, ({ yards }) =>
      ok(yards.insert({ id: 'last', name: 'Last', note: 'typed just before closing' })),
    );
    if (!saved.ok) throw new Error(saved.refusal.kind);
    say('S');
    workbook.close();
    say('E');
    break;
  }
  case 'copy': {
    const workbook = opened();
    say('S');
    workbook.keepCopy('timer');
    say('E');
    break;
  }
  case 'import': {
    const workbook = opened();
    say('S');
    workbook.keepCopy('before-import');
    workbook.change({ did: 'other' }, ({ yards }) => {
      for (let row = 1; row <= IMPORTED_ROWS; row += 1) {
        yards.insert({ id: `i${row}`, name: `Imported ${row}`, note: 'x'.repeat(100) });
      }
      return ok(null);
    });
    say('E');
    break;
  }
  case 'restore': {
    const keeper = startKeeper({
      documents: dirname(file),
      programData: dirname(safetyFolder),
      migrations: setting.migrations,
      now: setting.now,
      report: (error) => {
        throw error;
      },
    });
    keeper.open(file);
    const copy = keeper.copies.list().copies.at(-1);
    if (copy === undefined) throw new Error('There is no copy to go back to.');
    say('S');
    keeper.copies.restore(copy.id, null);
    say('E');
    break;
  }
  default:
    throw new Error(`No phase ${phase}.`);
}
// Waits to be killed, so that a late kill still finds a process.
setTimeout(() => {}, 60_000);
