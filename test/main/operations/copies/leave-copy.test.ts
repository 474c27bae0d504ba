import { expect, test } from 'vitest';
import { leaveCopy } from '../../../../main/operations/copies/leave-copy.ts';
import { getWorkbookState } from '../../../../main/operations/workbook/get-workbook-state.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('after leaving a copy the workbook is there again and can be written in', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  mustOk(lifecycle.keeper.copies.look(copy.id));
  mustOk(leaveCopy(lifecycle));
  expect(getWorkbookState(lifecycle).open).toMatchObject({ readOnly: false, lookingAt: null });
});

test('leaving when no copy is looked at changes nothing', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  mustOk(leaveCopy(lifecycle));
  expect(lifecycle.keeper.current?.name).toBe('Queens');
  expect(mustOk(leaveCopy(aLifecycle())).of).toBeNull();
});
