import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createWorkbookFile } from '../../../main/workbook/create-workbook.ts';
import { refuse } from '../../../shared/kernel/result.ts';
import { mustOk } from '../../builders/desk.ts';
import { aFolder, anOpenSetting } from '../../builders/workbook-file.ts';

const wanted = (file: string) => ({ file, name: 'My queens', kind: 'real' as const });

test('a new workbook is empty, open, and knows its name', () => {
  const folder = aFolder();
  const workbook = mustOk(createWorkbookFile(wanted(join(folder, 'q.ripecell')), anOpenSetting(folder)));
  expect(workbook).toMatchObject({ name: 'My queens', kind: 'real', readOnly: false, savedAt: null });
  expect(workbook.tables.batches.all()).toEqual([]);
  workbook.close();
  expect(readdirSync(folder)).toEqual(['q.ripecell']);
});

test('a file that is there already is never replaced', () => {
  const folder = aFolder();
  const file = join(folder, 'q.ripecell');
  writeFileSync(file, 'twenty years of work');
  expect(createWorkbookFile(wanted(file), anOpenSetting(folder))).toEqual(
    refuse({ kind: 'file-exists', field: 'name', file }),
  );
  expect(readFileSync(file, 'utf8')).toBe('twenty years of work');
});

test('a folder that is not there is named and not made', () => {
  const folder = join(aFolder(), 'stick');
  expect(createWorkbookFile(wanted(join(folder, 'q.ripecell')), anOpenSetting(folder))).toEqual(
    refuse({ kind: 'folder-not-found', field: 'folder', folder }),
  );
});

test('what an earlier, interrupted beginning left behind is cleared away', () => {
  const folder = aFolder();
  writeFileSync(join(folder, 'q.ripecell.new'), 'half a file');
  writeFileSync(join(folder, 'q.ripecell.new-journal'), 'half a journal');
  mustOk(createWorkbookFile(wanted(join(folder, 'q.ripecell')), anOpenSetting(folder))).close();
  expect(readdirSync(folder)).toEqual(['q.ripecell']);
});

test('nothing is left behind when the file cannot be made', () => {
  const folder = aFolder();
  mkdirSync(join(folder, 'q.ripecell.new'));
  const result = createWorkbookFile(wanted(join(folder, 'q.ripecell')), anOpenSetting(folder));
  expect(result.ok).toBe(false);
  expect(readdirSync(folder)).toEqual(['q.ripecell.new']);
});
