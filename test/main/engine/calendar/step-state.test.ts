import { describe, expect, test } from 'vitest';
import { isLateWorthNaming, stepState } from '../../../../main/engine/calendar/step-state.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import { day, stepOf, timetableOf } from '../../../builders/calendar.ts';

/** Larvae given on 10 May: count taken 11 to 12 May, cells moved by 20 May. */
const timetable = timetableOf();
const state = (step: Parameters<typeof stepOf>[1], today: string, of = timetable) =>
  stepState(stepOf(of, step), of.steps, day(today));

describe('how a step stands', () => {
  test.each([
    ['2026-05-10', 'coming'],
    ['2026-05-11', 'due'],
    ['2026-05-12', 'due'],
    ['2026-05-13', 'late'],
  ] as const)('counting on %s is %s', (today, expected) => {
    expect(state('count-taken', today)).toBe(expected);
  });

  test('a job may be done before its expected day, inside its window', () => {
    expect(state('place-cells', '2026-05-19')).toBe('can-be-done');
    expect(state('place-cells', '2026-05-20')).toBe('due');
  });

  test('happenings and hands-off days pass, they are never late', () => {
    expect(state('emergence', '2026-06-30')).toBe('passed');
    expect(state('hands-off-mating', '2026-06-30')).toBe('passed');
  });

  test('a job is overtaken by a later milestone, and a done one stays done', () => {
    const placed = timetableOf({ done: [{ step: 'place-cells', on: day('2026-05-20') }] });
    expect(state('check-own-cells', '2026-05-21')).toBe('late');
    expect(state('check-own-cells', '2026-05-21', placed)).toBe('passed');
    expect(state('count-sealed', '2026-05-21', placed)).toBe('passed');
    expect(state('place-cells', '2026-07-01', placed)).toBe('done');
    expect(state('emergence-check', '2026-05-24', placed)).toBe('due');
    const looked = timetableOf({ done: [{ step: 'first-look', on: day('2026-06-03') }] });
    expect(state('emergence-check', '2026-06-04', looked)).toBe('passed');
    expect(state('set-out', '2026-06-04', looked)).toBe('passed');
  });

  test('only a milestone overtakes: a job that is open stays late beside another that is done', () => {
    const counted = timetableOf({ done: [{ step: 'count-sealed', on: day('2026-05-15') }] });
    expect(state('check-own-cells', '2026-05-16', counted)).toBe('late');
    expect(state('count-taken', '2026-05-16', counted)).toBe('late');
  });

  test('putting the boxes out comes after the cells and is not overtaken by placing them', () => {
    const placed = timetableOf({ done: [{ step: 'place-cells', on: day('2026-05-19') }] });
    expect(state('stock-boxes', '2026-05-20', placed)).toBe('passed');
    expect(state('set-out', '2026-05-22', placed)).toBe('due');
    expect(state('set-out', '2026-05-23', placed)).toBe('late');
  });

  test('a happening is due on every day of its window', () => {
    expect(state('emergence', '2026-05-20')).toBe('coming');
    expect(state('emergence', '2026-05-21')).toBe('due');
    expect(state('emergence', '2026-05-23')).toBe('due');
  });

  test('a late job is forgotten after ten days', () => {
    const step = stepOf(timetable, 'count-taken');
    expect(isLateWorthNaming(step, addDays(step.latest, 10))).toBe(true);
    expect(isLateWorthNaming(step, addDays(step.latest, 11))).toBe(false);
  });
});
