import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openWorkbook } from '../../../../main/operations/workbook/open-workbook.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle } from '../../../builders/lifecycle.ts';

test('a workbook made elsewhere opens under its own name and is remembered', () => {
  const elsewhere = aLifecycle();
  const { file } = mustOk(elsewhere.keeper.begin('From the other house', null));
  elsewhere.keeper.stop();
  const state = mustOk(openWorkbook(aLifecycle(), { file }));
  expect(state.open).toMatchObject({ name: 'From the other house', file });
  expect(state.recent).toEqual([{ name: 'From the other house', file, found: true }]);
});

test('a file that is not there is refused, and the open workbook stays open', () => {
  const computer = aComputer();
  const lifecycle = aLifecycle({}, computer);
  mustOk(lifecycle.keeper.begin('Queens', null));
  const file = join(computer.documents, 'gone.ripecell');
  expect(openWorkbook(lifecycle, { file })).toEqual(refuse({ kind: 'file-not-found', field: 'file', file }));
  expect(lifecycle.keeper.current?.name).toBe('Queens');
});

test('a workbook another program holds is refused as open elsewhere', () => {
  const holder = aLifecycle();
  const { file } = mustOk(holder.keeper.begin('Queens', null));
  expect(openWorkbook(aLifecycle(), { file })).toEqual(
    refuse({ kind: 'workbook-open-elsewhere', field: 'file', file }),
  );
});
