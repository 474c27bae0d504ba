import { expect, test } from 'vitest';
import { reserveBoxes } from '../../../../main/engine/calendar/reserve-boxes.ts';
import type { PlannedBatch } from '../../../../shared/model/clash.ts';
import { day, stepOf, timetableOf } from '../../../builders/calendar.ts';

const batch = (givenOn: string, cells: number | null): PlannedBatch => ({
  id: givenOn,
  timetable: timetableOf({ anchor: { step: 'give-larvae', on: day(givenOn) } }),
  builderId: null,
  breederId: null,
  cells,
  barIds: [],
});
const box = (id: string, freeFrom: string | null) => ({ id, freeFrom: freeFrom === null ? null : day(freeFrom) });

test('a batch takes the boxes that are free on its placing day, and gives them back once its queens are proved', () => {
  // Larvae of 10 May: placed on 20 May, sealed brood looked for on 12 June, boxes free on the 13th.
  const first = batch('2026-05-10', 2);
  expect(stepOf(first.timetable, 'place-cells').expected).toBe(day('2026-05-20'));
  const back = day('2026-06-13');
  expect(stepOf(first.timetable, 'sealed-brood-look').expected).toBe(day('2026-06-12'));
  const boxes = [box('K1', '2026-05-18'), box('K2', '2026-05-01'), box('K3', '2026-05-21'), box('K4', null)];
  expect(reserveBoxes(boxes, [first]).map(({ freeFrom }) => freeFrom)).toEqual([back, back, day('2026-05-21'), null]);
});

test('an earlier placing day takes first, whatever the order of the batches', () => {
  const boxes = [box('K1', '2026-05-01'), box('K2', '2026-05-21')];
  const batches = [batch('2026-05-14', 1), batch('2026-05-10', 1)];
  const after = reserveBoxes(boxes, batches);
  expect(after).toEqual(reserveBoxes(boxes, batches.toReversed()));
  expect(after.map(({ freeFrom }) => freeFrom)).toEqual([day('2026-06-13'), day('2026-06-17')]);
});

test('a batch that has placed its cells, or whose cells nobody counted, takes none', () => {
  const placed = {
    ...batch('2026-05-10', 2),
    timetable: timetableOf({ done: [{ step: 'place-cells', on: day('2026-05-20') }] }),
  };
  const boxes = [box('K1', '2026-05-01')];
  expect(reserveBoxes(boxes, [placed, batch('2026-05-10', null)])).toEqual(boxes);
});
