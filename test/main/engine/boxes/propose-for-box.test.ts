import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BoxStanding } from '../../../../main/engine/boxes/box-standing.ts';
import { proposeForBox } from '../../../../main/engine/boxes/propose-for-box.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import { LOOK_RESULTS } from '../../../../shared/model/look.ts';
import { aStanding, dayAfter, seen } from '../../../builders/box-standing.ts';

const kinds = (box: BoxStanding) => {
  const proposed = proposeForBox(box);
  return proposed && [proposed.kind, ...proposed.reasons.map((reason) => reason.kind)];
};
const cellsIn = (age: number, days: number) => ({
  cellsComing: { batchId: 'b', batch: '26-03', on: addDays(dayAfter(age), days) },
});

describe('a proved queen', () => {
  // Survival after taking climbs steeply up to 24 days of age (Rhodes, Somerville & Harden 2004, Apidologie 35:383).
  test('is left until day 21, then taken', () => {
    expect(kinds(aStanding(20, [seen(19, 'proved')]))).toBeNull();
    expect(kinds(aStanding(21, [seen(19, 'proved')]))).toEqual(['re-use', 'proved']);
  });

  // "Harvest at least 2 days before the next cell": de Bruyn 2015, Bee Craft April/May.
  test('leaves her box free for a cell two days later', () => {
    expect(proposeForBox(aStanding(22, [seen(21, 'proved')]))?.freeFrom).toBe(dayAfter(24));
  });
});

describe('no queen found', () => {
  test('once: look again four days later, never inside the hands-off days', () => {
    const once = proposeForBox(aStanding(13, [seen(12, 'none')]));
    expect([once?.kind, once?.on]).toEqual(['look-again', dayAfter(16)]);
    const early = proposeForBox(aStanding(3, [seen(2, 'none')]));
    expect([early?.kind, early?.on]).toEqual(['look-again', dayAfter(11)]);
  });

  test('twice running: a new cell where one comes in time, else unite', () => {
    const looks = [seen(8, 'none'), seen(12, 'none')];
    expect(kinds(aStanding(13, looks, cellsIn(13, 3)))).toEqual(['give-cell', 'no-queen', 'cells-coming']);
    expect(kinds(aStanding(13, looks))).toEqual(['unite', 'no-queen', 'no-cells-coming']);
  });

  test('a queen seen in between begins the count anew', () => {
    expect(kinds(aStanding(17, [seen(8, 'none'), seen(12, 'virgin'), seen(16, 'none')]))).toEqual([
      'look-again',
      'may-be-missed',
    ]);
  });

  test('once is enough when she is given up by the calendar anyway', () => {
    expect(kinds(aStanding(30, [seen(12, 'none')]))).toEqual(['shake-out', 'no-queen', 'laying-workers']);
  });

  test('a weak box is united even when cells are at hand', () => {
    const looks = [seen(8, 'none', 2), seen(12, 'none')];
    expect(kinds(aStanding(13, looks, cellsIn(13, 3)))).toEqual(['unite', 'no-queen', 'weak']);
    expect(kinds(aStanding(13, [seen(8, 'none', 2), seen(12, 'none', 3)], cellsIn(13, 3)))?.[0]).toBe('give-cell');
  });

  // Laying workers after three to four weeks without brood (from memory, no source seen). The cell came on day -2.
  test('three weeks without brood: workers may lay; four weeks: shaken out', () => {
    const looks = [seen(14, 'none'), seen(18, 'none')];
    expect(kinds(aStanding(18, looks, cellsIn(18, 0)))).toEqual(['give-cell', 'no-queen', 'cells-coming']);
    expect(kinds(aStanding(18, looks, cellsIn(18, 1)))).toEqual(['unite', 'no-queen']);
    expect(kinds(aStanding(19, looks, cellsIn(19, 0)))).toEqual(['unite', 'no-queen', 'laying-workers']);
    expect(kinds(aStanding(25, looks))).toEqual(['unite', 'no-queen', 'laying-workers', 'no-cells-coming']);
    expect(kinds(aStanding(26, looks))).toEqual(['shake-out', 'no-queen', 'laying-workers']);
  });

  test('brood seen once puts the laying workers off', () => {
    const looks = [seen(13, 'laying'), seen(20, 'none'), seen(25, 'none')];
    expect(kinds(aStanding(26, looks))).toEqual(['unite', 'no-queen', 'no-cells-coming']);
  });
});

describe('no eggs yet', () => {
  // First look about two weeks after set-up; mating should be done in three weeks (Büchler et al. 2013, 2.2.2).
  test('before the first look nothing is proposed', () => {
    expect(kinds(aStanding(9, [seen(9, 'virgin')]))).toBeNull();
    expect(kinds(aStanding(12, [seen(2, 'out')]))).toBeNull();
  });

  test('from day 21 it is late', () => {
    expect(kinds(aStanding(13, [seen(12, 'virgin')]))).toEqual(['look-again', 'no-eggs-yet']);
    expect(kinds(aStanding(21, [seen(20, 'queen')]))).toEqual(['look-again', 'no-eggs-yet', 'late']);
  });

  // "Too late by four weeks": norfolkbee.co.uk.
  test('by day 28 she is given up only when she was seen without eggs in the fourth week', () => {
    expect(kinds(aStanding(28, [seen(21, 'virgin')], cellsIn(28, 2)))).toEqual([
      'shake-out',
      'given-up',
      'laying-workers',
    ]);
    expect(kinds(aStanding(28, [seen(20, 'virgin')]))).toEqual(['look-again', 'no-eggs-yet']);
    expect(kinds(aStanding(28, [seen(2, 'out')]))).toEqual(['look-again', 'no-eggs-yet']);
    expect(kinds(aStanding(28, []))).toEqual(['look-again', 'never-looked']);
    expect(kinds(aStanding(27, []))).toBeNull();
  });
});

describe('the others', () => {
  test('bees gone: use the box again; laying: its sealed-brood look is in the timetable', () => {
    expect(kinds(aStanding(12, [seen(12, 'gone')]))).toEqual(['re-use', 'bees-gone']);
    expect(kinds(aStanding(30, [seen(12, 'laying')]))).toBeNull();
  });

  test('a failed cell needs no second look', () => {
    expect(kinds(aStanding(3, [seen(2, 'cell-failed')], cellsIn(3, 4)))).toEqual([
      'give-cell',
      'cell-failed',
      'cells-coming',
    ]);
  });

  test('a cell still closed four days after it was due has failed', () => {
    expect(kinds(aStanding(3, [seen(3, 'cell')]))).toBeNull();
    expect(kinds(aStanding(4, [seen(4, 'cell')]))).toEqual(['unite', 'cell-closed', 'no-cells-coming']);
  });

  test('a drone-layer is shaken out, or replaced where the bees are strong and a cell is at hand', () => {
    expect(kinds(aStanding(22, [seen(21, 'drone-layer')], cellsIn(22, 1)))).toEqual(['shake-out', 'drone-layer']);
    expect(kinds(aStanding(22, [seen(21, 'drone-layer', 4)], cellsIn(22, 1)))).toEqual([
      'give-cell',
      'drone-layer',
      'cells-coming',
    ]);
    expect(kinds(aStanding(22, [seen(21, 'drone-layer', 2)], cellsIn(22, 1)))).toEqual([
      'shake-out',
      'drone-layer',
      'weak',
    ]);
  });
});

test('whatever was seen: a reason at least, a day not before today, and no look inside the hands-off days', () => {
  const look = fc.record({
    age: fc.integer({ min: 0, max: 40 }),
    result: fc.constantFrom(...LOOK_RESULTS.filter((result) => result !== 'not-looked')),
    strength: fc.option(fc.integer({ min: 1, max: 5 })),
  });
  const looksOf = (raw: readonly { age: number; result: (typeof LOOK_RESULTS)[number]; strength: number | null }[]) =>
    raw.toSorted((a, b) => a.age - b.age).map(({ age, result, strength }) => seen(age, result, strength));
  fc.assert(
    fc.property(
      fc.array(look, { maxLength: 6 }),
      fc.integer({ min: 0, max: 20 }),
      fc.boolean(),
      (raw, later, cells) => {
        const looks = looksOf(raw);
        const age = Math.max(0, ...raw.map((one) => one.age)) + later;
        const proposed = proposeForBox(aStanding(age, looks, cells ? cellsIn(age, 3) : {}));
        if (proposed === null) return;
        expect(proposed.reasons.length).toBeGreaterThan(0);
        expect(proposed.on).toBeGreaterThanOrEqual(dayAfter(age));
        expect(proposed.on >= dayAfter(3) && proposed.on <= dayAfter(10) && proposed.kind === 'look-again').toBe(false);
        expect(proposed.kind === 'give-cell').toBe(proposed.cells !== null && proposed.kind !== 're-use');
      },
    ),
  );
});
