import { expect, test } from 'vitest';
import { guessHabits } from '../../../renderer/shell/guess-habits.ts';

// Order of dates and first day of the week come from the Unicode Common Locale Data Repository through ICU in the runtime;
// the expected values are CLDR's own (supplemental data "weekData": Monday is the world's default, Sunday US, Saturday EG).
test.each([
  ['en-US', 'month-first', 'sunday', 'fahrenheit', 'us'],
  ['en-GB', 'day-first', 'monday', 'celsius', 'metric'],
  ['de-AT', 'day-first', 'monday', 'celsius', 'metric'],
  ['de', 'day-first', 'monday', 'celsius', 'metric'],
  ['en', 'month-first', 'sunday', 'fahrenheit', 'us'],
  ['sv-SE', 'year-first', 'monday', 'celsius', 'metric'],
  ['ja-JP', 'year-first', 'sunday', 'celsius', 'metric'],
  ['zh-TW', 'year-first', 'sunday', 'celsius', 'metric'],
  ['ar-EG', 'day-first', 'saturday', 'celsius', 'metric'],
  ['en-BZ', 'day-first', 'sunday', 'fahrenheit', 'metric'],
] as const)('%s: %s, week from %s, %s, %s', (locale, dateOrder, weekStart, temperature, measures) => {
  expect(guessHabits(locale)).toEqual({ dateOrder, weekStart, temperature, measures });
});
