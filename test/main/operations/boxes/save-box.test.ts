import { expect, test } from 'vitest';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { saveBox } from '../../../../main/operations/boxes/save-box.ts';
import { fill, mustOk } from '../../../builders/desk.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

test('a box moves to another yard and place in the walk, and keeps what it holds', () => {
  const desk = aDeskWithBoxes();
  fill(desk, ({ yards }) => yards.insert(aYard()));
  const moved = aBox({ code: 'K01', yardId: 'yard-1', row: 'pond', walkOrder: 99, note: 'leaks' });
  const { boxes } = mustOk(saveBox(desk, moved));
  expect(boxes[0]).toMatchObject({ code: 'K01', yard: 'Orchard', row: 'pond', state: 'cell', note: 'leaks' });
  expect(listBoxes(desk).at(-1)?.code).toBe('K01');
});

test('refuses a code of another box, a yard that is gone and a box that is gone', () => {
  const desk = aDeskWithBoxes();
  const refused = (changes: Parameters<typeof aBox>[0]) => refusalOf(saveBox(desk, aBox(changes)));
  expect(refused({ code: 'K02' })).toEqual({ kind: 'box-code-taken', field: 'codes', code: 'K02' });
  expect(refused({ yardId: 'gone' })).toEqual({ kind: 'yard-not-found', field: 'yardId' });
  expect(refused({ id: 'gone', code: 'K77' })).toEqual({ kind: 'box-not-found', field: 'boxId', code: 'K77' });
});
