import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildDemo, DEMO_DAY } from '../../main/demo/build-demo.ts';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { OpenSetting } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { countedIds } from '../builders/desk.ts';

export const MIGRATIONS = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));

export const settingIn = (folder: string): OpenSetting => ({
  migrations: readMigrations(MIGRATIONS),
  safetyFolder: join(folder, 'safety-copies'),
  now: () => new Date().toISOString(),
  damagePause: 0,
});

/** A workbook with seasons in it, told through the operations, open in the folder. */
export function aFullWorkbook(folder: string, setting: OpenSetting): Workbook {
  const created = createWorkbookFile({ file: join(folder, 'w.ripecell'), name: 'Faults', kind: 'real' }, setting);
  if (!created.ok) throw new Error(created.refusal.kind);
  buildDemo({
    workbook: created.value,
    today: DEMO_DAY,
    ids: countedIds(),
    reckon: reckonHere(),
    computerLanguage: 'en',
  });
  return created.value;
}
