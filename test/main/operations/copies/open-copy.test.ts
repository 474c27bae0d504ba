import { expect, test } from 'vitest';
import { openCopy } from '../../../../main/operations/copies/open-copy.ts';
import { getWorkbookState } from '../../../../main/operations/workbook/get-workbook-state.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { addYard, yardsIn } from '../../../builders/copies.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('a copy is shown for reading, and the page is told which', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  addYard(lifecycle.keeper.current, 'later');
  expect(mustOk(openCopy(lifecycle, { copy: copy.id }))).toEqual(copy);
  expect(getWorkbookState(lifecycle).open).toMatchObject({
    name: 'Queens',
    readOnly: true,
    readOnlyBecause: 'copy',
    lookingAt: copy,
  });
  expect(yardsIn(lifecycle.keeper.current)).toEqual([]);
});

test('a copy that is not on the list is refused, also one named by a path', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  for (const copy of ['here:gone', '/etc/passwd', 'here:../../documents/Queens.ripecell'])
    expect(openCopy(lifecycle, { copy })).toEqual(refuse({ kind: 'copy-not-found', field: 'copy' }));
});
