import { describe, expect, it } from 'vitest';
import { methodDays } from '../../../../main/engine/calendar/method-days.ts';
import { timetableOf } from '../../../builders/calendar.ts';

const GRAFTING = { method: 'larva-grafting', comb: null, builderType: 'queenless', boxType: null } as const;

describe('methodDays', () => {
  it('lists the days of the built-in method as a timetable has them', () => {
    const { steps, larvaeGivenOn } = timetableOf({ larvaAgeHours: null });
    expect(
      methodDays(GRAFTING, []).map(({ row, builtIn }) => [
        row.step,
        builtIn.earliest,
        builtIn.expected,
        builtIn.latest,
      ]),
    ).toEqual(
      steps.map((step) => [
        step.step,
        step.earliest - larvaeGivenOn,
        step.expected - larvaeGivenOn,
        step.latest - larvaeGivenOn,
      ]),
    );
  });

  it('marks nothing changed in a copy without changes', () => {
    expect(methodDays(GRAFTING, []).filter((line) => line.changed)).toEqual([]);
  });

  it('shows what a copy changes beside the origin', () => {
    const lines = methodDays(GRAFTING, [{ step: 'first-look', earliestDay: 20, expectedDay: 22, latestDay: 24 }]);
    expect(
      lines.filter((line) => line.changed).map(({ row, builtIn, own }) => [row.step, builtIn.expected, own.expected]),
    ).toEqual([['first-look', 24, 22]]);
  });

  it.each([
    [21, 24, 26],
    [22, 23, 26],
    [22, 24, 27],
  ])('marks a window of %i, %i, %i as changed where one day differs', (earliestDay, expectedDay, latestDay) => {
    const lines = methodDays(GRAFTING, [{ step: 'first-look', earliestDay, expectedDay, latestDay }]);
    expect(lines.find(({ row }) => row.step === 'first-look')?.changed).toBe(true);
  });

  it('shows that a copy cannot move the deadline', () => {
    const lines = methodDays(GRAFTING, [{ step: 'place-cells', earliestDay: 11, expectedDay: 11, latestDay: 12 }]);
    expect(lines.find(({ row }) => row.step === 'place-cells')?.own.latest).toBe(10);
  });
});
