import fc from 'fast-check';
import { expect, test } from 'vitest';
import { copiesToDrop, type RotatedCopy } from '../../../main/workbook/copy-rotation.ts';
import { CopyPurpose } from '../../../shared/contract/copies.ts';
import { type Day, isoOfDay } from '../../../shared/kernel/day.ts';

/** Day 20,000 is 4 October 2024, a Friday (any calendar). */
const copyOn = (day: number, hour = 20, changes: Partial<RotatedCopy> = {}): RotatedCopy => ({
  at: `${isoOfDay(day as Day)}T${String(hour).padStart(2, '0')}:00:00.000Z`,
  purpose: 'close',
  checked: true,
  ...changes,
});

const keptOf = (copies: readonly RotatedCopy[]) => {
  const dropped = new Set(copiesToDrop(copies));
  return copies.filter((copy) => !dropped.has(copy));
};

test('ten copies all stay', () => {
  expect(copiesToDrop(Array.from({ length: 10 }, (_, hour) => copyOn(20_000, hour)))).toEqual([]);
});

test('after a year of one copy a day stay: 14 days, then the last of 8 weeks, then the last of 24 months', () => {
  const year = Array.from({ length: 366 }, (_, day) => copyOn(20_000 + day));
  const days = keptOf(year).map(({ at }) => at.slice(0, 10));
  // By hand: the year ends on 4 October 2025, a Saturday. The last 14 days reach back to 21 September, a Sunday. Weeks
  // end on Sundays (the running one on its newest copy), months on their last day.
  expect(days).toEqual([
    ...['2024-10-31', '2024-11-30', '2024-12-31', '2025-01-31', '2025-02-28', '2025-03-31', '2025-04-30'],
    ...['2025-05-31', '2025-06-30', '2025-07-31', '2025-08-17', '2025-08-24', '2025-08-31', '2025-09-07', '2025-09-14'],
    ...Array.from({ length: 10 }, (_, day) => `2025-09-${21 + day}`),
    ...['2025-10-01', '2025-10-02', '2025-10-03', '2025-10-04'],
  ]);
});

test('a winter without typing drops nothing', () => {
  const autumn = Array.from({ length: 13 }, (_, day) => copyOn(20_000 + day));
  expect(copiesToDrop([...autumn, copyOn(20_200)]).length).toBe(0);
});

test('copies made by hand stay, and the newest three before each kind of risk', () => {
  const old = [
    copyOn(10_000, 1, { purpose: 'by-hand' }),
    ...[1, 2, 3, 4].map((hour) => copyOn(10_100, hour, { purpose: 'before-format', checked: false })),
    ...[1, 2, 3, 4].map((hour) => copyOn(10_200, hour, { purpose: 'before-import', checked: false })),
  ];
  const busy = Array.from({ length: 40 }, (_, hour) => copyOn(20_000 + Math.floor(hour / 20), hour % 20));
  const kept = keptOf([...old, ...busy]);
  expect(kept.filter(({ at }) => at < '2020').map(({ at, purpose }) => `${purpose} ${at.slice(11, 13)}`)).toEqual([
    'by-hand 01',
    ...['before-format 02', 'before-format 03', 'before-format 04'],
    ...['before-import 02', 'before-import 03', 'before-import 04'],
  ]);
});

test('whatever the copies, the newest checked one stays, the ten newest stay, and one more run drops nothing', () => {
  const anyCopy = fc.record({
    at: fc.integer({ min: 15_000, max: 22_000 }).chain((day) => fc.nat(23).map((hour) => copyOn(day, hour).at)),
    purpose: fc.constantFrom(...CopyPurpose.options),
    checked: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(anyCopy, { maxLength: 120 }), (copies) => {
      const kept = keptOf(copies);
      const newestFirst = copies
        .map(({ at }) => at)
        .sort()
        .reverse();
      expect(
        kept
          .map(({ at }) => at)
          .sort()
          .reverse()
          .slice(0, 10),
      ).toEqual(newestFirst.slice(0, 10));
      const soundest = (some: readonly RotatedCopy[]) =>
        some
          .filter(({ checked }) => checked)
          .map(({ at }) => at)
          .sort()
          .at(-1);
      expect(soundest(kept)).toBe(soundest(copies));
      expect(copiesToDrop(kept)).toEqual([]);
    }),
  );
});
