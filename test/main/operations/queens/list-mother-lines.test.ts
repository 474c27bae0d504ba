import { expect, test } from 'vitest';
import { listMotherLines } from '../../../../main/operations/queens/list-mother-lines.ts';
import { aDesk, fill } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('puts daughters under their mother, a hive without a numbered queen at the root, each in the order of numbers', () => {
  const desk = aDeskWithBoxes();
  fill(desk, ({ queens }) => {
    queens.insert(aQueen({ id: 'b', number: '26-010', batchId: 'batch-1', breederId: 'h03' }));
    queens.insert(aQueen({ id: 'a', number: '26-002', batchId: 'batch-1', breederId: 'h03' }));
    queens.insert(aQueen({ id: 'c', number: '26-003', motherId: 'a' }));
    queens.insert(aQueen({ id: 'd', number: '20-001', bornIn: 2020 }));
  });
  const told = listMotherLines(desk).map(({ ref, queen, daughters }) => ({
    name: ref.name,
    colour: queen?.yearColour ?? null,
    daughters: daughters.map((one) => [one.ref.name, one.daughters.map((two) => two.ref.name)]),
  }));
  // Year colours: 2020 blue (tbbk.co.uk and seven more pages).
  expect(told).toEqual([
    { name: '20-001', colour: 'blue', daughters: [] },
    {
      name: 'H03',
      colour: null,
      daughters: [
        ['26-002', ['26-003']],
        ['26-010', []],
      ],
    },
  ]);
  expect(listMotherLines(aDesk())).toEqual([]);
});
