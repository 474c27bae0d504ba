import { expect, test } from 'vitest';
import { beginWorkbook } from '../../../../main/operations/workbook/begin-workbook.ts';
import { openPractice } from '../../../../main/operations/workbook/open-practice.ts';
import { resetPractice } from '../../../../main/operations/workbook/reset-practice.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';
import { aYard } from '../../../builders/yard.ts';

test('one act and the practice workbook is the invented yard of the first day again, still open', () => {
  const lifecycle = aLifecycle();
  mustOk(openPractice(lifecycle));
  const workbook = lifecycle.keeper.current;
  if (!workbook) throw new Error('nothing open');
  fill({ ...lifecycle, workbook, today: lifecycle.demo.day }, ({ yards }) => {
    for (const yard of yards.all()) yards.remove(yard.id);
    yards.insert(aYard({ id: 'typed', name: 'Typed' }));
  });
  expect(mustOk(resetPractice(lifecycle)).open).toMatchObject({ kind: 'practice', today: '2025-07-10' });
  expect(lifecycle.keeper.current?.tables.yards.all().map(({ name }) => name)).toEqual(['Made up']);
});

test('with a workbook of one’s own open, or none, it is refused', () => {
  const lifecycle = aLifecycle();
  expect(resetPractice(lifecycle)).toEqual(refuse({ kind: 'not-practice' }));
  const begun = mustOk(beginWorkbook(lifecycle, { name: 'Queens', folder: null, habits: undefined }));
  expect(resetPractice(lifecycle)).toEqual(refuse({ kind: 'not-practice' }));
  expect(lifecycle.keeper.current?.file).toBe(begun.open?.file);
});
