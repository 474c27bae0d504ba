import { expect, test } from 'vitest';
import { readDay } from '../../../../main/operations/files/row-reader.ts';
import { dayOfIso } from '../../../../shared/kernel/day.ts';

const TODAY = dayOfIso('2026-06-01');

test.each([
  ['31.12.2025', 'day-first', '2025-12-31'],
  ['12/31/25', 'month-first', '2025-12-31'],
  ['1.1.26', 'day-first', '2026-01-01'],
  ['26-12-01', 'year-first', '2026-12-01'],
  // A year of four digits in front decides by itself, and ISO 8601 needs no order.
  ['2025/12/31', 'month-first', '2025-12-31'],
  ['2025-12-31', 'day-first', '2025-12-31'],
  ['29.02.2024', 'day-first', '2024-02-29'],
] as const)('%s read %s is %s', (text, order, day) => {
  expect(readDay(text, order, TODAY)).toBe(day);
});

test.each([
  ['31.13.2025', 'day-first'],
  ['13/31/2025', 'day-first'],
  ['0.5.2026', 'day-first'],
  ['32.5.2026', 'day-first'],
  ['5.0.2026', 'day-first'],
  ['29.02.2026', 'day-first'],
  ['31.04.2026', 'day-first'],
  ['1.5.1949', 'day-first'],
] as const)('%s read %s is no day', (text, order) => {
  expect(readDay(text, order, TODAY)).toBeNull();
});
