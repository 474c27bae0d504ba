import { expect, test } from 'vitest';
import { closeWorkbook } from '../../../../main/operations/workbook/close-workbook.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('after closing none is open, and the workbook is offered again', () => {
  const lifecycle = aLifecycle();
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  const state = mustOk(closeWorkbook(lifecycle));
  expect(state.open).toBeNull();
  expect(state.recent).toEqual([{ name: 'Queens', file, found: true }]);
  expect(mustOk(lifecycle.keeper.open(file)).name).toBe('Queens');
});

test('closing when none is open is no mistake', () => {
  expect(mustOk(closeWorkbook(aLifecycle())).open).toBeNull();
});
