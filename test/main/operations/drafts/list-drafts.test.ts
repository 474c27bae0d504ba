import { expect, test } from 'vitest';
import { listDrafts } from '../../../../main/operations/drafts/list-drafts.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('each workbook has its own drafts; a safety copy that is looked at, and no workbook at all, have none', () => {
  const lifecycle = aLifecycle();
  const { keeper } = lifecycle;
  expect(listDrafts(lifecycle)).toEqual({});
  const { file } = mustOk(keeper.begin('Queens', null));
  keeper.drafts.keep(file, 'bar-counts:b1', '{"given":"1"}');
  expect(listDrafts(lifecycle)).toEqual({ 'bar-counts:b1': '{"given":"1"}' });
  const copy = mustOk(keeper.copies.make('by-hand'));
  mustOk(keeper.copies.look(copy.id));
  expect(listDrafts(lifecycle)).toEqual({});
  mustOk(keeper.begin('Other', null));
  expect(listDrafts(lifecycle)).toEqual({});
});
