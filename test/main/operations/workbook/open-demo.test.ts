import { expect, test } from 'vitest';
import { closeWorkbook } from '../../../../main/operations/workbook/close-workbook.ts';
import { openDemo } from '../../../../main/operations/workbook/open-demo.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aClock, aLifecycle } from '../../../builders/lifecycle.ts';

test('the demo is held at its own day, whatever day it is, also when it is opened again', () => {
  const lifecycle = aLifecycle({ clock: aClock('2031-12-24') });
  const demo = { kind: 'demo', today: '2025-07-10', season: 2025 };
  expect(mustOk(openDemo(lifecycle)).open).toMatchObject(demo);
  mustOk(closeWorkbook(lifecycle));
  expect(mustOk(openDemo(lifecycle)).open).toMatchObject(demo);
  expect(lifecycle.keeper.current?.tables.yards.all()).toMatchObject([{ name: 'Made up' }]);
});

test('the demo does not join the workbooks that are offered again', () => {
  const lifecycle = aLifecycle();
  const state = mustOk(openDemo(lifecycle));
  expect(state.recent).toEqual([]);
  expect(state.missing).toBeNull();
});
