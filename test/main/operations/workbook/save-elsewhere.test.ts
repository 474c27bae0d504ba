import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { saveElsewhere } from '../../../../main/operations/workbook/save-elsewhere.ts';
import { ok, refuse } from '../../../../shared/kernel/result.ts';
import { addYard, yardsIn } from '../../../builders/copies.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';
import { aFolder } from '../../../builders/workbook-file.ts';
import { aYard } from '../../../builders/yard.ts';

test('a file that another program replaced: all that was saved goes on elsewhere, and the other file is left alone', () => {
  const lifecycle = aLifecycle();
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  addYard(lifecycle.keeper.current, 'a');
  writeFileSync(`${file}.other`, 'another program’s file');
  renameSync(`${file}.other`, file);
  const typed = lifecycle.keeper.current?.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id: 'b' }))));
  expect(typed).toEqual(refuse({ kind: 'not-saved', reason: 'file-replaced' }));
  const folder = aFolder();
  const state = mustOk(saveElsewhere(lifecycle, { folder }));
  expect(state.open).toMatchObject({ name: 'Queens', file: join(folder, 'Queens.ripecell'), readOnly: false });
  addYard(lifecycle.keeper.current, 'b');
  expect(yardsIn(lifecycle.keeper.current)).toEqual(['a', 'b']);
  expect(readFileSync(file, 'utf8')).toBe('another program’s file');
});

test('a safety copy that is looked at can become a workbook of its own', () => {
  const lifecycle = aLifecycle();
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  addYard(lifecycle.keeper.current, 'a');
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  addYard(lifecycle.keeper.current, 'b');
  mustOk(lifecycle.keeper.copies.look(copy.id));
  const folder = aFolder();
  expect(mustOk(saveElsewhere(lifecycle, { folder })).open).toMatchObject({
    file: join(folder, 'Queens.ripecell'),
    lookingAt: null,
  });
  expect(yardsIn(lifecycle.keeper.current)).toEqual(['a']);
  expect(yardsIn(mustOk(lifecycle.keeper.open(file)))).toEqual(['a', 'b']);
});

test('a name in use in the other folder is not written over', () => {
  const lifecycle = aLifecycle();
  const folder = aFolder();
  writeFileSync(join(folder, 'Queens.ripecell'), 'something else');
  mustOk(lifecycle.keeper.begin('Queens', null));
  expect(mustOk(saveElsewhere(lifecycle, { folder })).open?.file).toBe(join(folder, 'Queens (2).ripecell'));
  expect(readFileSync(join(folder, 'Queens.ripecell'), 'utf8')).toBe('something else');
});

test('a missing folder and a missing workbook are refused, and what is open stays open', () => {
  const lifecycle = aLifecycle();
  const folder = join(aFolder(), 'gone');
  expect(saveElsewhere(lifecycle, { folder })).toEqual(refuse({ kind: 'no-workbook-to-copy' }));
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  expect(saveElsewhere(lifecycle, { folder })).toEqual(refuse({ kind: 'folder-not-found', field: 'folder', folder }));
  expect(lifecycle.keeper.current?.file).toBe(file);
  expect(existsSync(folder)).toBe(false);
});
