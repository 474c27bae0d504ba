import { expect, test } from 'vitest';
import { listCopies } from '../../../../main/operations/copies/list-copies.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aComputer, aLifecycle, NOON } from '../../../builders/lifecycle.ts';

test('before anything was begun there are none, and the folder they will go to is known', () => {
  const computer = aComputer();
  expect(listCopies(aLifecycle({}, computer))).toEqual({
    ...{ of: null, copies: [], secondPlace: null, hold: null },
    folder: `${computer.programData}/safety-copies`,
  });
});

test('a copy is listed with its date and what it holds, and nothing about its inside', () => {
  const lifecycle = aLifecycle();
  const { file } = mustOk(lifecycle.keeper.begin('Queens', null));
  const copy = mustOk(lifecycle.keeper.copies.make('by-hand'));
  expect(listCopies(lifecycle)).toMatchObject({ of: { name: 'Queens', file }, copies: [copy] });
  expect(copy).toMatchObject({ at: NOON, checked: true });
  expect(Object.keys(copy).sort()).toEqual(['at', 'bytes', 'checked', 'counts', 'file', 'id', 'place', 'purpose']);
});
