import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lookAtWorkbook } from '../../../../main/operations/workbook/look-at-workbook.ts';
import { openWorkbook } from '../../../../main/operations/workbook/open-workbook.ts';
import { ok, refuse } from '../../../../shared/kernel/result.ts';
import { inAnotherProcess } from '../../../builders/another-process.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle } from '../../../builders/lifecycle.ts';
import { aYard } from '../../../builders/yard.ts';

test('a workbook another program writes in is shown as it is saved, and nothing can be changed', async () => {
  const { documents } = aComputer();
  const holder = await inAnotherProcess(join(documents, 'Queens.ripecell'));
  await holder.addYard('Orchard');
  const here = aLifecycle();
  expect(openWorkbook(here, { file: holder.file }).ok).toBe(false);
  const state = mustOk(lookAtWorkbook(here, { file: holder.file }));
  expect(state.open).toMatchObject({ name: 'Queens', file: holder.file, readOnlyBecause: 'open-elsewhere' });
  const { keeper } = here;
  expect(keeper.current?.tables.yards.all().map(({ name }) => name)).toEqual(['Orchard']);
  const change = keeper.current?.change({ did: 'other' }, (tables) => {
    tables.yards.insert(aYard({ id: 'yard-2', name: 'Hill' }));
    return ok(null);
  });
  expect(change).toEqual(refuse({ kind: 'not-saved', reason: 'read-only' }));

  await holder.addYard('Meadow');
  expect(keeper.current?.tables.yards.all()).toHaveLength(1);
  mustOk(lookAtWorkbook(here, { file: holder.file }));
  expect(keeper.current?.tables.yards.all().map(({ name }) => name)).toEqual(['Orchard', 'Meadow']);

  expect(openWorkbook(here, { file: holder.file })).toEqual(
    refuse({ kind: 'workbook-open-elsewhere', field: 'file', file: holder.file }),
  );
  expect(keeper.current?.readOnlyBecause).toBe('open-elsewhere');
  await holder.close();
  expect(mustOk(openWorkbook(here, { file: holder.file })).open).toMatchObject({ readOnlyBecause: null });
});

test('what this program has open for writing stays so', () => {
  const here = aLifecycle();
  const { file } = mustOk(here.keeper.begin('Queens', null));
  expect(mustOk(lookAtWorkbook(here, { file })).open).toMatchObject({ readOnlyBecause: null });
});

test('a file that is not there is refused, and the open workbook stays open', () => {
  const computer = aComputer();
  const here = aLifecycle({}, computer);
  mustOk(here.keeper.begin('Queens', null));
  const file = join(computer.documents, 'gone.ripecell');
  expect(lookAtWorkbook(here, { file })).toEqual(refuse({ kind: 'file-not-found', field: 'file', file }));
  expect(here.keeper.current?.name).toBe('Queens');
});
