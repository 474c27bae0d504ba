/**
 * Runs in a process of its own and is killed in the middle of a save.
 * Arguments: workbook, migrations folder, safety folder, 'honest' or 'boasting', milliseconds between two saves (none).
 * Prints `B <change>` at the beginning of each change, inside its transaction, and `A <change>` once it is acknowledged. A boasting
 * child acknowledges too early: the control that shows whether the parent would notice a loss.
 */
import { writeSync } from 'node:fs';
import { flushCompileCache } from 'node:module';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aBar, aBatch } from '../builders/batch.ts';

/** Rows of one save: a mark, an evening's form, an import. */
const ROWS_PER_CHANGE = [1, 20, 400];

const [file = '', migrations = '', safetyFolder = '', manner = '', pause = '0'] = process.argv.slice(2);
// A killed process leaves no cache behind; with one the next starts in half the time.
flushCompileCache();
const opened = openWorkbookFile(file, {
  migrations: readMigrations(migrations),
  safetyFolder,
  now: () => new Date().toISOString(),
});
if (!opened.ok) throw new Error(opened.refusal.kind);
const workbook = opened.value;
const say = (line: string) => writeSync(1, `${line}\n`);

for (let change = workbook.tables.batches.all().length + 1; ; change += 1) {
  const bars = ROWS_PER_CHANGE[change % ROWS_PER_CHANGE.length] ?? 1;
  if (manner === 'boasting') say(`A ${change}`);
  const saved = workbook.change({ did: 'other' }, (tables) => {
    say(`B ${change}`);
    // The batch says how many bars belong to it, so that half a change can be told.
    tables.batches.insert(aBatch({ id: `batch-${change}`, code: `k-${change}`, cellsPlanned: bars }));
    for (let number = 1; number <= bars; number += 1) {
      tables.bars.insert(aBar({ id: `bar-${change}-${number}`, batchId: `batch-${change}`, number }));
    }
    const total = Number(tables.settings.get('total') ?? 0) + bars;
    tables.settings.put('total', total);
    return ok(null);
  });
  if (!saved.ok) throw new Error(saved.refusal.kind);
  if (manner === 'honest') say(`A ${change}`);
  if (Number(pause) > 0) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, Number(pause));
}
