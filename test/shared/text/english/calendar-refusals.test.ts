import { expect, test } from 'vitest';
import { isoOfDay } from '../../../../shared/kernel/day.ts';
import type { CalendarRefusal } from '../../../../shared/model/timetable.ts';
import { calendarRefusalSentence } from '../../../../shared/text/english/calendar-refusals.ts';
import { day } from '../../../builders/calendar.ts';

const REFUSALS: readonly CalendarRefusal[] = [
  { kind: 'method-unknown', field: 'method', method: 'moon-rearing' },
  { kind: 'step-not-in-method', field: 'anchor', step: 'cage-queen', known: ['give-larvae'] },
  { kind: 'larva-age-turned-round', field: 'larvaAgeHours', from: 24, to: 12 },
  { kind: 'larva-age-impossible', field: 'larvaAgeHours', hours: 120, most: 96 },
  { kind: 'temperature-impossible', field: 'sealedStageCelsius', celsius: 25, least: 31, most: 37 },
  {
    kind: 'seen-before-laying',
    field: 'seen',
    id: 'a',
    what: 'cells-sealed',
    on: day('2026-05-01'),
    laidFrom: day('2026-05-06'),
  },
  { kind: 'seen-needs-hours', field: 'seen', id: 'a', what: 'larva-size' },
  { kind: 'seen-hours-turned-round', field: 'seen', id: 'a', what: 'larva-size' },
  {
    kind: 'done-out-of-order',
    field: 'done',
    step: 'place-cells',
    on: day('2026-05-09'),
    after: 'give-larvae',
    afterOn: day('2026-05-10'),
  },
  {
    kind: 'moved-out-of-order',
    field: 'moved',
    step: 'place-cells',
    on: day('2026-05-09'),
    after: 'give-larvae',
    afterOn: day('2026-05-10'),
  },
  {
    kind: 'window-turned-round',
    field: 'changes',
    step: 'first-look',
    earliestDay: 24,
    expectedDay: 22,
    latestDay: 26,
  },
];

test.each(REFUSALS)('$kind: names the field, then what is wrong, then a remedy', (refusal) => {
  const sentence = calendarRefusalSentence(refusal, isoOfDay);
  expect(sentence).toMatch(/^[A-Z][a-z ]+: /);
  expect(sentence).toMatch(/(Choose|Type|Correct|Change|Put) .*\.$/);
  expect(sentence).not.toMatch(/undefined|NaN|\[object/);
});

test('the days of the person are in it', () => {
  const [refusal] = REFUSALS.filter((one) => one.kind === 'seen-before-laying');
  if (!refusal) throw new Error('the list lacks its refusal');
  const sentence = calendarRefusalSentence(refusal, isoOfDay);
  expect(sentence).toContain('2026-05-01');
  expect(sentence).toContain('2026-05-06');
});
