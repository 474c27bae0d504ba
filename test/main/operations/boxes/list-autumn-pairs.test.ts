import { expect, test } from 'vitest';
import { listAutumnPairs } from '../../../../main/operations/boxes/list-autumn-pairs.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { promiseQueen } from '../../../../main/operations/queens/promise-queen.ts';
import { saveWish } from '../../../../main/operations/season/save-wish.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

/** Emergence is expected on 16 May; the queens are looked at on 5 June, and the pairs asked for the day after. */
const LOOKED_ON = '2026-06-05';

function look(
  desk: Desk,
  place: number,
  result: LookResult,
  strength: number | null,
  queen: string | null = null,
  lookedOn = LOOKED_ON,
): void {
  const seen = { lookedOn, result, strength, food: null, note: null };
  const numbered = queen === null ? null : { id: `queen-${place}`, number: queen };
  const id = `look-${place}-${lookedOn}`;
  mustOk(recordLook(onDay(desk, lookedOn), { id, boxId: `box-${place}`, ...seen, queen: numbered }));
}

/** K01 proved and weak, K02 proved, K03 twice without a queen, K04 without a strength, K05 laying, K06 only once none. */
function aDeskBeforeWinter(): Desk {
  const desk = aDeskWithBoxes();
  look(desk, 3, 'none', 3, null, '2026-06-01');
  look(desk, 1, 'proved', 2, '26-001');
  look(desk, 2, 'proved', 4, '26-002');
  look(desk, 3, 'none', 3);
  look(desk, 4, 'proved', null);
  look(desk, 5, 'laying', 4);
  look(desk, 6, 'none', 4);
  return onDay(desk, '2026-06-06');
}

const aWish = (queens: number, forWhom: string | null) => ({
  id: `wish-${forWhom}`,
  forWhom,
  queens,
  wantedOn: '2026-06-20',
  settledOn: null,
  note: null,
});

test('tells each box that holds something with strength, queen and year, and free boxes not at all', () => {
  const { boxes } = listAutumnPairs(aDeskBeforeWinter());
  expect(boxes.map(({ code, strength, queen }) => [code, strength?.value ?? null, queen])).toEqual([
    ['K01', 2, 'proved'],
    ['K02', 4, 'proved'],
    ['K03', 3, 'none'],
    ['K04', null, 'proved'],
    ['K05', 4, 'laying'],
    ['K06', 4, 'not-sure'],
  ]);
  expect(boxes[0]).toMatchObject({ queenNumber: '26-001', bornIn: 2026, strength: { value: 2, on: LOOKED_ON } });
  // A queen without a number is of the year in which her batch emerges.
  expect(boxes[3]).toMatchObject({ queenNumber: null, bornIn: 2026 });
});

test('pairs the weak one with its neighbour and says of each box left over why', () => {
  const { pairs, left } = listAutumnPairs(aDeskBeforeWinter());
  expect(pairs).toEqual([
    {
      joined: 'box-1',
      keeper: 'box-2',
      why: [{ kind: 'weak', strength: 2 }],
      out: { box: 'box-1', reason: { kind: 'same-year', bornIn: 2026 }, claim: { kind: 'spare' } },
      first: 'take-out',
    },
  ]);
  expect(left.map(({ box, why }) => [box, why.kind])).toEqual([
    ['box-3', 'no-neighbour'],
    ['box-4', 'strength-unknown'],
    ['box-5', 'not-proved-yet'],
    ['box-6', 'look-again'],
  ]);
});

test('a strength of last month is not taken for today’s; its day is told', () => {
  const [first] = listAutumnPairs(onDay(aDeskBeforeWinter(), '2026-07-10')).left;
  expect(first).toEqual({ box: 'box-1', why: { kind: 'strength-old', on: LOOKED_ON } });
});

test('a queen who was proved and is seen to lay later is still proved', () => {
  const desk = aDeskBeforeWinter();
  look(desk, 2, 'laying', 4, null, '2026-06-06');
  look(desk, 4, 'laying', 4, null, '2026-06-06');
  expect(listAutumnPairs(desk).boxes.map(({ queen }) => queen)).toEqual([
    'proved',
    'proved',
    'none',
    'proved',
    'laying',
    'not-sure',
  ]);
});

test('wishes make proved queens wanted: all when as many are asked for, else any of them perhaps', () => {
  const desk = aDeskBeforeWinter();
  const claims = () => listAutumnPairs(desk).boxes.map(({ claim }) => claim?.kind ?? null);
  expect(claims()).toEqual(['spare', 'spare', null, 'spare', null, null]);
  mustOk(saveWish(desk, aWish(2, 'Ida')));
  expect(claims()).toEqual(['perhaps', 'perhaps', null, 'perhaps', null, null]);
  mustOk(saveWish(desk, aWish(1, null)));
  expect(listAutumnPairs(desk)).toMatchObject({ wanted: 3, notPromised: 3 });
  expect(claims()).toEqual(['wanted', 'wanted', null, 'wanted', null, null]);
});

test('a promise counts for the wish of its name; a queen handed over too', () => {
  const desk = aDeskBeforeWinter();
  mustOk(saveWish(desk, aWish(2, 'Ida')));
  const promise = { promisedOn: '2026-06-06', promisedTo: 'ida', wantedOn: null, note: null };
  mustOk(promiseQueen(desk, { id: 'promise-1', queenId: 'queen-1', ...promise }));
  const view = listAutumnPairs(desk);
  expect(view).toMatchObject({ wanted: 1, notPromised: 2 });
  expect(view.pairs[0]).toMatchObject({ first: 'give-or-cage', out: { claim: { kind: 'promised', to: 'ida' } } });
  const gone = { place: 'given', goneTo: 'Ida', colonyId: null, way: null, price: null, note: null } as const;
  mustOk(moveQueen(desk, { id: 'move-2', queenId: 'queen-2', movedOn: '2026-06-06', ...gone }));
  expect(listAutumnPairs(desk)).toMatchObject({ wanted: 0, notPromised: 1 });
});

test('the bees of a drone-layer may be joined, those of a box long without brood are shaken out', () => {
  const desk = aDeskBeforeWinter();
  for (const place of [1, 2]) look(desk, place, 'proved', 4, null, '2026-06-16');
  look(desk, 5, 'drone-layer', 2, null, '2026-06-16');
  const { pairs, left } = listAutumnPairs(onDay(desk, '2026-06-16'));
  expect(left).toContainEqual({ box: 'box-3', why: { kind: 'workers-may-lay' } });
  expect(pairs).toMatchObject([{ joined: 'box-5', keeper: 'box-2', out: { box: 'box-5' } }]);
});

// Given up without eggs from day 28 after emergence on; a closed cell from day 4: the rows of box-turnaround.
test.each([
  { result: 'gone', on: '2026-06-01', day: '2026-06-01', queen: 'bees-gone' },
  { result: 'cell-failed', on: '2026-06-01', day: '2026-06-01', queen: 'none' },
  { result: 'cell', on: '2026-05-18', day: '2026-05-18', queen: 'on-the-way' },
  { result: 'cell', on: '2026-05-21', day: '2026-05-21', queen: 'none' },
  { result: 'virgin', on: '2026-05-28', day: '2026-05-28', queen: 'on-the-way' },
  { result: 'virgin', on: '2026-06-14', day: '2026-06-14', queen: 'given-up' },
  { result: null, on: '', day: '2026-05-20', queen: 'on-the-way' },
  { result: null, on: '', day: '2026-06-20', queen: 'not-sure' },
] as const)('last look $result on $on, on $day: $queen', ({ result, on, day, queen }) => {
  const desk = aDeskWithBoxes();
  if (result !== null) look(desk, 1, result, 3, null, on);
  expect(listAutumnPairs(onDay(desk, day)).boxes[0]?.queen).toBe(queen);
});

test('the strength of the latest look counts, in whichever order they were typed', () => {
  const desk = aDeskWithBoxes();
  look(desk, 1, 'laying', 4);
  look(desk, 1, 'laying', 2, null, '2026-06-01');
  expect(listAutumnPairs(onDay(desk, '2026-06-06')).boxes[0]?.strength).toEqual({ value: 4, on: LOOKED_ON });
});

test('a box out of use is not told of', () => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-7', retiredOn: '2026-05-14' }));
  expect(listAutumnPairs(desk).boxes).toHaveLength(6);
});
