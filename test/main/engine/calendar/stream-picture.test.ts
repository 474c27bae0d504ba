import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { streamDays } from '../../../../main/engine/calendar/stream-picture.ts';
import { emptyTally } from '../../../../main/engine/yield/batch-tally.ts';
import { addDays, isoOfDay } from '../../../../shared/kernel/day.ts';
import type { BatchTally } from '../../../../shared/model/tally.ts';
import { day, timetableOf } from '../../../builders/calendar.ts';

/** Larvae given on 10 May: emergence 21 to 23 May. */
const timetable = timetableOf();
const aTally = (changes: Partial<BatchTally> = {}): BatchTally => ({ ...emptyTally('b'), ...changes });
const stream = (tally: Partial<BatchTally> = {}, planned: number | null = null, of = timetable) =>
  streamDays(of, aTally(tally), planned);
const alive = (tally: Partial<BatchTally>, planned: number | null = null) =>
  Object.fromEntries(stream(tally, planned).bands.map((band) => [band.stage, [band.alive, band.forecast]]));

const counted = { given: 20, taken: 16, enteredSealing: 16, sealed: 14, placed: 10 } as const;

describe('the life of a batch as bands', () => {
  test('they follow each other without a gap, in the order of a life', () => {
    const { bands, from, to } = stream();
    expect(bands.map((band) => band.stage)).toEqual(['egg', 'larva', 'sealed', 'ready', 'virgin', 'laying']);
    expect(bands[0]?.from).toBe(from);
    expect(bands.at(-1)?.to).toBe(to);
    bands.slice(1).forEach((band, index) => {
      expect(band.from).toBe(bands[index]?.to);
    });
  });

  test('their days are those of the timetable', () => {
    const { bands } = stream();
    const from = Object.fromEntries(bands.map((band) => [band.stage, isoOfDay(band.from)]));
    expect(from).toMatchObject({
      larva: '2026-05-10',
      ready: '2026-05-20',
      virgin: isoOfDay(timetable.emergence.expected),
    });
  });

  test('a done day counts before an expected one', () => {
    const early = timetableOf({ done: [{ step: 'place-cells', on: day('2026-05-19') }] });
    const ready = stream({}, null, early).bands.find((band) => band.stage === 'ready');
    expect(ready && isoOfDay(ready.from)).toBe('2026-05-19');
    expect(stream({}, null, early).flags.find((flag) => flag.step === 'place-cells')).toEqual({
      step: 'place-cells',
      on: day('2026-05-19'),
      done: true,
    });
  });

  test('no band ever runs backwards, however early or late the cells were moved', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 13 }), (shift) => {
        const of = timetableOf({ done: [{ step: 'place-cells', on: addDays(day('2026-05-10'), shift) }] });
        for (const band of stream({}, null, of).bands) expect(band.to).toBeGreaterThan(band.from);
      }),
    );
  });
});

describe('the number alive', () => {
  test('is the last one counted, carried forward as a forecast', () => {
    expect(alive({ given: 20, taken: 16 })).toEqual({
      egg: [20, false],
      larva: [16, false],
      sealed: [16, true],
      ready: [16, true],
      virgin: [16, true],
      laying: [16, true],
    });
  });

  test('nothing counted is not nothing alive; the plan stands in for it', () => {
    expect(alive({}).larva).toEqual([null, true]);
    expect(alive({}, 12).larva).toEqual([12, true]);
    expect(alive({ given: 20, taken: 0, sealed: 0 }, 12).sealed).toEqual([0, false]);
  });

  test('queens count only once every box is known', () => {
    const half = alive({ ...counted, emergenceKnown: 6, emerged: 5 });
    expect(half.virgin).toEqual([10, true]);
    const whole = alive({ ...counted, emergenceKnown: 10, emerged: 8, matingKnown: 8, proved: 6 });
    expect(whole).toMatchObject({ virgin: [8, false], laying: [6, false] });
    expect(alive({ ...counted, emergenceKnown: 10, emerged: 8, matingKnown: 7, proved: 6 }).laying).toEqual([8, true]);
  });

  test('a batch of which no queen came out has none to wait for', () => {
    expect(alive({ ...counted, emergenceKnown: 10, emerged: 0 })).toMatchObject({ virgin: [0, false] });
  });

  test('losses lie where a count fell, and never in a forecast', () => {
    const { losses, bands } = stream({ given: 20, taken: 16, sealed: 14 });
    const dayOf = (stage: string) => bands.find((band) => band.stage === stage)?.from;
    expect(losses).toEqual([
      { stage: 'larva', cells: 4, setAside: 0, on: dayOf('larva') },
      { stage: 'sealed', cells: 2, setAside: 0, on: dayOf('sealed') },
    ]);
    expect(stream({ given: 20, taken: 20 }).losses).toEqual([]);
    expect(stream({ sealed: 14 }).losses).toEqual([]);
    expect(stream({}, 12).losses).toEqual([]);
    expect(stream({ given: 20 }, 25).losses).toEqual([]);
  });

  test('fewer than planned is no loss: without the cells given nothing is known to be lost', () => {
    expect(stream({ taken: 31 }, 40).losses).toEqual([]);
    expect(stream({ given: 38, taken: 31 }, 40).losses).toMatchObject([{ stage: 'larva', cells: 7 }]);
  });

  test('cells removed on purpose or not put in boxes are set aside, not lost', () => {
    const { losses } = stream({ given: 20, taken: 16, enteredSealing: 13, sealed: 12, placed: 10 });
    expect(losses.map(({ stage, cells, setAside }) => [stage, cells, setAside])).toEqual([
      ['larva', 4, 0],
      ['sealed', 1, 3],
      ['ready', 0, 2],
    ]);
  });

  test('cells moved on the day they were sealed keep their losses apart from those removed on purpose', () => {
    const sealedOn = timetable.steps.find((step) => step.step === 'count-sealed')?.expected ?? day('2026-05-15');
    const of = timetableOf({ done: [{ step: 'place-cells', on: sealedOn }] });
    const { bands, losses } = stream({ given: 20, taken: 16, enteredSealing: 13, sealed: 12, placed: 12 }, null, of);
    expect(bands.map((band) => band.stage)).not.toContain('sealed');
    expect(losses.map(({ stage, cells, setAside }) => [stage, cells, setAside])).toEqual([
      ['larva', 4, 0],
      ['sealed', 1, 3],
    ]);
  });
});

test('flags mark the six days on which something is counted or looked at', () => {
  const { flags } = stream();
  expect(flags.map((flag) => flag.step)).toEqual([
    'count-taken',
    'count-sealed',
    'place-cells',
    'emergence-check',
    'first-look',
    'sealed-brood-look',
  ]);
  expect(flags.every((flag) => !flag.done)).toBe(true);
});
