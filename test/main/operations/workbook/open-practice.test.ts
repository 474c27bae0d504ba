import { expect, test } from 'vitest';
import { closeWorkbook } from '../../../../main/operations/workbook/close-workbook.ts';
import { openDemo } from '../../../../main/operations/workbook/open-demo.ts';
import { openPractice } from '../../../../main/operations/workbook/open-practice.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aClock, aLifecycle } from '../../../builders/lifecycle.ts';
import { aYard } from '../../../builders/yard.ts';

test('the practice workbook is the invented yard at its own day, apart from the demo, and keeps what was typed', () => {
  const lifecycle = aLifecycle({ clock: aClock('2031-12-24') });
  const practice = { kind: 'practice', today: '2025-07-10', season: 2025, name: 'Practice yard' };
  expect(mustOk(openPractice(lifecycle)).open).toMatchObject(practice);
  const { current } = lifecycle.keeper;
  if (current)
    fill({ ...lifecycle, workbook: current, today: lifecycle.demo.day }, ({ yards }) =>
      yards.insert(aYard({ id: 'typed', name: 'Typed' })),
    );
  mustOk(closeWorkbook(lifecycle));
  mustOk(openDemo(lifecycle));
  expect(lifecycle.keeper.current?.tables.yards.all()).toHaveLength(1);
  const again = mustOk(openPractice(lifecycle));
  expect(again.open).toMatchObject(practice);
  expect(again.recent).toEqual([]);
  expect(lifecycle.keeper.current?.tables.yards.all().map(({ name }) => name)).toEqual(['Made up', 'Typed']);
});
