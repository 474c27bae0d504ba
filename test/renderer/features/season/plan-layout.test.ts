import { expect, test } from 'vitest';
import { placeOf } from '../../../../renderer/charts/SeasonStrip.tsx';
import { awayIn, axisOf, dronesIn } from '../../../../renderer/features/season/plan-layout.ts';

const week = (from: string) => ({ from, builders: { most: 0, of: 0 }, boxes: { most: 0, of: 0 }, wanted: 0 });
const WEEK = week('2026-05-04');

test('a day lies under its own week: half of two weeks is the first day of the second', () => {
  const axis = axisOf([WEEK, week('2026-05-11')]);
  if (!axis) throw new Error('no axis');
  expect(placeOf(axis, '2026-05-04')).toBe(0);
  expect(placeOf(axis, '2026-05-11')).toBe(50);
  expect(placeOf(axis, '2026-05-18')).toBe(100);
  expect(axisOf([])).toBeNull();
});

test('days away count in the week they fall in, its first and last day too', () => {
  expect(awayIn(WEEK, ['2026-05-03', '2026-05-04', '2026-05-10', '2026-05-11'])).toBe(2);
});

test('mature drones from a day on: none before its week, from that day in it, all week after', () => {
  expect(dronesIn(WEEK, '2026-05-11')).toBe('none');
  expect(dronesIn(WEEK, '2026-05-10')).toEqual({ from: '2026-05-10' });
  expect(dronesIn(WEEK, '2026-05-04')).toBe('all-week');
});
