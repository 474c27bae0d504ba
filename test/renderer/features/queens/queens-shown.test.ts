import { expect, test } from 'vitest';
import { listQueens } from '../../../../main/operations/queens/list-queens.ts';
import { type QueenChoice, queensShown } from '../../../../renderer/features/queens/queens-shown.ts';
import { QUEEN_PLACES } from '../../../../shared/model/queen.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aPromise } from '../../../builders/queen-promise.ts';

test('the register is narrowed by where she is and by her line', () => {
  const desk = aDesk();
  fill(desk, ({ queens }) =>
    QUEEN_PLACES.forEach((place, index) => {
      queens.insert(aQueen({ id: place, number: `26-00${index}`, place, motherLine: index % 2 ? 'Anna' : 'Berta' }));
    }),
  );
  const shown = (place: QueenChoice, line = '') =>
    queensShown(listQueens(desk), { place, line }).map(({ queen }) => queen.place);
  expect(shown('all')).toHaveLength(QUEEN_PLACES.length);
  expect(shown('here').toSorted()).toEqual(['caged', 'in-box', 'in-hive']);
  expect(shown('gone').toSorted()).toEqual(['given', 'sold']);
  expect(shown('gone', 'Anna')).toEqual(['given']);
  fill(desk, ({ queenPromises }) => queenPromises.insert(aPromise({ queenId: 'caged' })));
  expect(shown('promised')).toEqual(['caged']);
  expect(shown('free').toSorted()).toEqual(['in-box', 'in-hive']);
});
