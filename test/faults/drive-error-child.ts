/**
 * Saves a few times on a drive that fails somewhere. Arguments: workbook, 'honest' or 'boasting'.
 * Prints `A <id>` for each acknowledged save, `N <reason>` for each refused one. The boasting child acknowledges what was
 * refused: the control that shows whether a loss would be noticed.
 */
import { writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aYard } from '../builders/yard.ts';
import { settingIn } from './sample-workbook.ts';

const SAVES = 8;
/** One save in the middle writes more than SQLite's cache spills at once. */
const BIG = { at: 4, rows: 300 };

const [file = '', manner = ''] = process.argv.slice(2);
const say = (line: string) => writeSync(1, `${line}\n`);
const opened = openWorkbookFile(file, settingIn(dirname(file)));
if (!opened.ok) {
  say(`O ${opened.refusal.kind}`);
  process.exit();
}
const workbook = opened.value;
for (let number = 1; number <= SAVES; number += 1) {
  const rows = number === BIG.at ? BIG.rows : 1;
  const saved = workbook.change({ did: 'other' }, ({ yards }) => {
    for (let row = 1; row <= rows; row += 1) {
      yards.insert(aYard({ id: `y${number}-${row}`, name: `Yard ${number}-${row}`, note: 'x'.repeat(200) }));
    }
    return ok(null);
  });
  if (saved.ok || manner === 'boasting') say(`A ${number} ${rows}`);
  else say(`N ${saved.refusal.kind === 'not-saved' ? saved.refusal.reason : saved.refusal.kind}`);
}
workbook.close();
