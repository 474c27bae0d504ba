import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { OpenSetting } from '../../main/workbook/open-workbook.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { MIGRATIONS_FOLDER, mustOk } from './desk.ts';

/** An empty folder that is gone after the test. */
export function aFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export const anOpenSetting = (folder: string, changes: Partial<OpenSetting> = {}): OpenSetting => ({
  migrations: readMigrations(MIGRATIONS_FOLDER),
  safetyFolder: join(folder, 'safety-copies'),
  now: () => '2026-06-01T18:00:00.000Z',
  damagePause: 1,
  ...changes,
});

/** A new workbook on disk, open; closed after the test if the test did not. */
export function aWorkbookFile(folder: string, changes: Partial<OpenSetting> = {}): Workbook {
  const file = join(folder, 'season.ripecell');
  const setting = anOpenSetting(folder, changes);
  const workbook = mustOk(createWorkbookFile({ file, name: 'Season', kind: 'real' }, setting));
  onTestFinished(() => workbook.close());
  return workbook;
}
