import { expect, test } from 'vitest';
import { releaseCopies } from '../../../../main/operations/copies/release-copies.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';

test('after going back old copies are held, until the person says go on', () => {
  const lifecycle = aLifecycle();
  mustOk(lifecycle.keeper.begin('Queens', null));
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  mustOk(lifecycle.keeper.copies.restore(copy.id, null));
  expect(lifecycle.keeper.copies.list().hold).toBe('restored');
  expect(mustOk(releaseCopies(lifecycle)).hold).toBeNull();
});
