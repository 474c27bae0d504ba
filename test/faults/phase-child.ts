/**
 * Does one thing that must be old or new but never half, and is killed in the middle of it.
 * Arguments: phase, workbook, migrations folder, safety folder. Prints `S` as it starts and `E` when it is through.
 */
import { writeSync } from 'node:fs';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { type OpenSetting, openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { ok } from '../../shared/kernel/result.ts';

const [phase = '', file = '', migrations = '', safetyFolder = ''] = process.argv.slice(2);
const setting: OpenSetting = {
  migrations: readMigrations(migrations),
  safetyFolder,
  now: () => new Date().toISOString(),
};
const say = (line: string) => writeSync(1, `${line}\n`);

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
    const opened = openWorkbookFile(file, setting);
    if (!opened.ok) throw new Error(opened.refusal.kind);
    const saved = opened.value.change({ did: 'other' }, ({ yards }) =>
      ok(yards.insert({ id: 'last', name: 'Last', note: 'typed just before closing' })),
    );
    if (!saved.ok) throw new Error(saved.refusal.kind);
    say('S');
    opened.value.close();
    say('E');
    break;
  }
  default:
    throw new Error(`No phase ${phase}.`);
}
// Waits to be killed, so that a late kill still finds a process.
setTimeout(() => {}, 60_000);
