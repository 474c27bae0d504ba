import { expect, test } from 'vitest';
import { undo } from '../../../../main/operations/history/undo.ts';
import { getQueen } from '../../../../main/operations/queens/get-queen.ts';
import { promiseQueen } from '../../../../main/operations/queens/promise-queen.ts';
import { takeBackPromise } from '../../../../main/operations/queens/take-back-promise.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aPromise } from '../../../builders/queen-promise.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('a promise is taken back, and undone it binds again', () => {
  const desk = aDesk();
  fill(desk, ({ queens }) => queens.insert(aQueen()));
  mustOk(promiseQueen(desk, aPromise()));
  const promised = getQueen(desk, { queenId: 'queen-1' });
  mustOk(takeBackPromise(desk, { promiseId: 'promise-1' }));
  expect(getQueen(desk, { queenId: 'queen-1' })).toMatchObject({ promise: null, promises: [] });
  mustOk(undo(desk));
  expect(getQueen(desk, { queenId: 'queen-1' })).toEqual(promised);
  mustOk(takeBackPromise(desk, { promiseId: 'promise-1' }));
  expect(refusalOf(takeBackPromise(desk, { promiseId: 'promise-1' }))).toEqual({ kind: 'promise-missing' });
});
