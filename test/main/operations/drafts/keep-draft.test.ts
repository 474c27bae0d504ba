import { expect, test } from 'vitest';
import { keepDraft } from '../../../../main/operations/drafts/keep-draft.ts';
import { listDrafts } from '../../../../main/operations/drafts/list-drafts.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle } from '../../../builders/lifecycle.ts';

test('what is half typed is there after the program ended without a word, until it is saved', () => {
  const computer = aComputer();
  const first = aLifecycle({}, computer);
  mustOk(first.keeper.begin('Queens', null));
  mustOk(keepDraft(first, { key: 'batch-note:b1', text: '"windy, all in th"' }));
  mustOk(keepDraft(first, { key: 'new-batch', text: '{}' }));
  first.keeper.stop();
  const second = aLifecycle({}, computer);
  expect(listDrafts(second)).toEqual({ 'batch-note:b1': '"windy, all in th"', 'new-batch': '{}' });
  mustOk(keepDraft(second, { key: 'batch-note:b1', text: null }));
  expect(listDrafts(second)).toEqual({ 'new-batch': '{}' });
});

test('without a workbook there is nothing it could belong to', () => {
  expect(keepDraft(aLifecycle(), { key: 'x', text: 'y' })).toEqual(refuse({ kind: 'no-workbook-open' }));
});
