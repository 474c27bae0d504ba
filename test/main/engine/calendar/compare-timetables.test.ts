import { describe, expect, it } from 'vitest';
import { compareTimetables } from '../../../../main/engine/calendar/compare-timetables.ts';
import { aSighting, day, timetableOf } from '../../../builders/calendar.ts';

describe('compareTimetables', () => {
  it('says nothing moved when nothing did', () => {
    const slip = compareTimetables(timetableOf(), timetableOf());
    expect(slip.movedSteps).toBe(0);
    expect(slip.labelsOutOfDate).toBe(false);
    expect(slip.calendarEntriesOutOfDate).toEqual([]);
    expect(slip.lines).toHaveLength(timetableOf().steps.length);
  });

  it('shows was and becomes when larvae were given a day late, with done steps locked', () => {
    const anchor = { step: 'insert-frame', on: day('2026-05-06') } as const;
    const done = [{ step: 'insert-frame', on: day('2026-05-06') }] as const;
    const before = timetableOf({ anchor, done });
    const after = timetableOf({ anchor, done: [...done, { step: 'give-larvae', on: day('2026-05-11') }] });
    const slip = compareTimetables(before, after);
    const line = (step: string) => slip.lines.find((one) => one.step === step);
    expect(line('first-look')).toMatchObject({ movesBy: 1, changed: true, locked: false });
    expect(line('first-look')?.was?.expected).toBe(day('2026-06-03'));
    expect(line('first-look')?.becomes?.expected).toBe(day('2026-06-04'));
    expect(line('insert-frame')).toMatchObject({ movesBy: 0, changed: false, locked: true });
    expect(slip.labelsOutOfDate).toBe(true);
    expect(slip.calendarEntriesOutOfDate).toContain('place-cells');
    expect(slip.calendarEntriesOutOfDate).not.toContain('insert-frame');
  });

  it('leaves labels alone when only the cells move', () => {
    const after = timetableOf({ moved: [{ step: 'count-taken', to: day('2026-05-12'), reason: 'rain' }] });
    const slip = compareTimetables(timetableOf(), after);
    expect(slip.calendarEntriesOutOfDate).toEqual(['count-taken']);
    expect(slip.labelsOutOfDate).toBe(false);
  });

  it('shows a window that narrows without moving', () => {
    const wide = { larvaAgeHours: [0, 24] } as const;
    const after = timetableOf({ ...wide, seen: [aSighting({ what: 'cells-browned', on: day('2026-05-18') })] });
    const emergence = compareTimetables(timetableOf(wide), after).lines.find((line) => line.step === 'emergence');
    expect(emergence).toMatchObject({ changed: true });
  });

  it('shows steps that come and go with another builder', () => {
    const slip = compareTimetables(timetableOf(), timetableOf({ builderType: 'divider-board' }));
    expect(slip.lines.find((line) => line.step === 'open-divider')).toMatchObject({ was: null, changed: true });
    const back = compareTimetables(timetableOf({ builderType: 'divider-board' }), timetableOf());
    expect(back.lines.find((line) => line.step === 'open-divider')).toMatchObject({ becomes: null, changed: true });
  });
});
