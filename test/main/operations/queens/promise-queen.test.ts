import { expect, test } from 'vitest';
import { getQueen } from '../../../../main/operations/queens/get-queen.ts';
import { listQueens } from '../../../../main/operations/queens/list-queens.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { promiseQueen } from '../../../../main/operations/queens/promise-queen.ts';
import { saveWish } from '../../../../main/operations/season/save-wish.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aPromise } from '../../../builders/queen-promise.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

function aDeskWithQueens() {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ queens }) => {
    queens.insert(aQueen({ place: 'caged' }));
    queens.insert(aQueen({ id: 'gone', number: '26-002', place: 'sold', goneTo: 'Ole' }));
  });
  return desk;
}
const given = (goneTo: string | null) =>
  ({
    id: 'move',
    queenId: 'queen-1',
    movedOn: '2026-06-02',
    place: 'given',
    goneTo,
    colonyId: null,
    way: null,
    price: null,
    note: null,
  }) as const;

test('a queen is promised, corrected under the same id, and shown so in the register', () => {
  const desk = aDeskWithQueens();
  mustOk(promiseQueen(desk, aPromise()));
  mustOk(promiseQueen(desk, aPromise({ wantedOn: '2026-06-12', note: 'green mark' })));
  expect(desk.workbook.tables.queenPromises.all()).toEqual([aPromise({ wantedOn: '2026-06-12', note: 'green mark' })]);
  const promise = listQueens(desk).find(({ queen }) => queen.id === 'queen-1')?.promise;
  expect(promise).toMatchObject({ promisedTo: 'Ines Berg', standing: 'open', byWhen: '2026-06-12' });
});

test('without a day of her own she is wanted when the first open wish of that name is', () => {
  const desk = aDeskWithQueens();
  const wish = { forWhom: 'ines berg', queens: 3, settledOn: null, note: null };
  mustOk(saveWish(desk, { id: 'later', wantedOn: '2026-07-01', ...wish }));
  mustOk(saveWish(desk, { id: 'first', wantedOn: '2026-06-20', ...wish }));
  mustOk(saveWish(desk, { id: 'done', wantedOn: '2026-06-10', ...wish, settledOn: '2026-06-01' }));
  mustOk(promiseQueen(desk, aPromise()));
  const queen = getQueen(desk, { queenId: 'queen-1' });
  expect([queen?.promise?.byWhen, queen?.wishers]).toEqual(['2026-06-20', ['ines berg']]);
});

test('giving her to that name keeps the promise; to another is told, and done all the same', () => {
  const kept = aDeskWithQueens();
  mustOk(promiseQueen(kept, aPromise()));
  expect(mustOk(moveQueen(kept, given('Ines Berg'))).notices.map(({ kind }) => kind)).not.toContain(
    'queen-promised-to-other',
  );
  const queen = getQueen(kept, { queenId: 'queen-1' });
  expect([queen?.promise, queen?.promises.map(({ standing }) => standing)]).toEqual([null, ['kept']]);
  const other = aDeskWithQueens();
  mustOk(promiseQueen(other, aPromise()));
  expect(mustOk(moveQueen(other, given('Ole'))).notices).toContainEqual({
    kind: 'queen-promised-to-other',
    queen: '26-001',
    to: 'Ines Berg',
  });
  expect(getQueen(other, { queenId: 'queen-1' })?.promises[0]?.standing).toBe('not-kept');
});

test('refuses a second promise, a queen that is gone or unknown, and a day before the promise', () => {
  const desk = aDeskWithQueens();
  mustOk(promiseQueen(desk, aPromise()));
  const refused = (changes: Partial<ReturnType<typeof aPromise>>) => refusalOf(promiseQueen(desk, aPromise(changes)));
  expect(refused({ id: 'second', promisedTo: 'Ole' })).toEqual({
    kind: 'queen-promised',
    field: 'promisedTo',
    queen: '26-001',
    to: 'Ines Berg',
  });
  expect(refused({ id: 'second', queenId: 'gone' })).toEqual({ kind: 'queen-not-here', queen: '26-002' });
  expect(refused({ id: 'second', queenId: 'none' })).toEqual({ kind: 'queen-missing' });
  expect(refused({ wantedOn: '2026-05-29' })).toEqual({
    kind: 'promise-days-turned-round',
    field: 'wantedOn',
    promisedOn: '2026-05-30',
  });
});
