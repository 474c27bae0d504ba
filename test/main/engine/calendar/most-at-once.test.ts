import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostAtOnce } from '../../../../main/engine/calendar/most-at-once.ts';
import { addDays, dayOfIso } from '../../../../shared/kernel/day.ts';

const day = dayOfIso;
const WEEKS = [day('2026-05-04'), day('2026-05-11'), day('2026-05-18')];

test('counts by the day on which most are in use, both ends included', () => {
  const used = [
    { id: 'K01', from: day('2026-05-04'), to: day('2026-05-10') },
    // Begins on the last day of the first and ends on the first day of the second.
    { id: 'K02', from: day('2026-05-10'), to: day('2026-05-11') },
    { id: 'K03', from: day('2026-05-12'), to: null },
  ];
  expect(mostAtOnce(used, WEEKS)).toEqual([2, 1, 1]);
});

test('a thing that is in use for two reasons is one thing', () => {
  const twice = { id: 'H12', from: day('2026-05-05'), to: day('2026-05-06') };
  expect(mostAtOnce([twice, twice], WEEKS)).toEqual([1, 0, 0]);
  expect(mostAtOnce([], WEEKS)).toEqual([0, 0, 0]);
});

test('is never more than there are, and never less than on any one day', () => {
  const spans = fc.array(fc.tuple(fc.nat(30), fc.nat(10)), { maxLength: 12 });
  fc.assert(
    fc.property(spans, fc.nat(20), (drawn, offset) => {
      const used = drawn.map(([from, length], index) => ({
        id: String(index),
        from: addDays(day('2026-05-01'), from),
        to: addDays(day('2026-05-01'), from + length),
      }));
      const on = addDays(day('2026-05-04'), offset);
      const that = mostAtOnce(used, WEEKS)[Math.floor(offset / 7)] ?? -1;
      expect(that).toBeLessThanOrEqual(used.length);
      expect(that).toBeGreaterThanOrEqual(used.filter(({ from, to }) => from <= on && on <= to).length);
    }),
  );
});
