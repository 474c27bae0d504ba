import { expect, test } from 'vitest';
import { listLooks } from '../../../../main/operations/boxes/list-looks.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLook } from '../../../builders/mating-box.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('the looks into one box, newest first, and none of another', () => {
  const desk = aDeskWithBoxes('2026-06-06');
  for (const [id, boxId, lookedOn] of [
    ['l2', 'box-1', '2026-06-06'],
    ['l1', 'box-1', '2026-05-28'],
    ['l3', 'box-2', '2026-05-30'],
  ] as const)
    mustOk(recordLook(desk, { ...aLook({ id, boxId, lookedOn }), queen: null }));
  expect(listLooks(desk, { boxId: 'box-1' }).map(({ id }) => id)).toEqual(['l2', 'l1']);
  expect(listLooks(desk, { boxId: 'box-9' })).toEqual([]);
});
