import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeErrand } from '../../main/operations/boxes/make-errand.ts';
import { recordLook } from '../../main/operations/boxes/record-look.ts';
import type { Desk } from '../../main/operations/operation.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { openWorkbookFile } from '../../main/workbook/open-workbook.ts';
import type { LookResult } from '../../shared/model/look.ts';
import { MIGRATIONS_FOLDER, mustOk } from './desk.ts';
import { aFolder } from './workbook-file.ts';

/** One typed look, for a box of aDeskWithBoxes (box-1 is K01). */
export const aTypedLook = (number: number, result: LookResult, changes: object = {}) => ({
  id: `look-${number}-${result}`,
  boxId: `box-${number}`,
  lookedOn: '2026-06-06',
  result,
  strength: null,
  food: null,
  note: null,
  queen: null,
  ...changes,
});

/** The errand as someone else has it: its file opened by the program on another computer, typed into, closed, sent back. */
export function errandTypedInto(home: Desk, boxes: string, type: (there: Desk) => void) {
  const made = mustOk(makeErrand(home, { boxes }));
  const folder = aFolder();
  const file = join(folder, 'errand.ripecell');
  writeFileSync(file, Buffer.from(made.base64, 'base64'));
  const opened = openWorkbookFile(file, {
    migrations: readMigrations(MIGRATIONS_FOLDER),
    safetyFolder: join(folder, 'safety'),
    now: () => '2026-06-06T19:00:00.000Z',
  });
  const workbook = mustOk(opened);
  type({ ...home, workbook });
  workbook.close();
  return { name: 'errand.ripecell', base64: readFileSync(file).toString('base64') };
}

export const look = (desk: Desk, typed: ReturnType<typeof aTypedLook>) => mustOk(recordLook(desk, typed));
