import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { restoreCopy } from '../../../../main/operations/copies/restore-copy.ts';
import { getWorkbookState } from '../../../../main/operations/workbook/get-workbook-state.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { addYard, yardsIn } from '../../../builders/copies.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('going back opens the copy as the workbook and says where the other one is kept', () => {
  const lifecycle = aLifecycle();
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  addYard(lifecycle.keeper.current, 'a');
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  addYard(lifecycle.keeper.current, 'b');
  mustOk(lifecycle.keeper.copies.look(copy.id));
  const { keptAs } = mustOk(restoreCopy(lifecycle, { copy: copy.id, folder: null }));
  expect(getWorkbookState(lifecycle).open).toMatchObject({ file, readOnly: false, lookingAt: null });
  expect(yardsIn(lifecycle.keeper.current)).toEqual(['a']);
  expect(existsSync(String(keptAs))).toBe(true);
});

test('a copy that is gone is refused, and the workbook stays', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  addYard(lifecycle.keeper.current, 'a');
  expect(restoreCopy(lifecycle, { copy: 'here:gone', folder: null })).toEqual(
    refuse({ kind: 'copy-not-found', field: 'copy' }),
  );
  expect(yardsIn(lifecycle.keeper.current)).toEqual(['a']);
});
