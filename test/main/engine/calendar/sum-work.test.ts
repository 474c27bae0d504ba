import { describe, expect, it } from 'vitest';
import { sumMaterials, sumWork } from '../../../../main/engine/calendar/sum-work.ts';
import { day, timetableOf } from '../../../builders/calendar.ts';

describe('sumWork', () => {
  it('sums minutes and materials of the open jobs of each day', () => {
    const two = [
      ...timetableOf().steps,
      ...timetableOf({ anchor: { step: 'give-larvae', on: day('2026-05-09') } }).steps,
    ];
    const days = sumWork(two, day('2026-05-10'), day('2026-05-10'));
    expect(days).toHaveLength(1);
    // 60 minutes for grafting one batch, 15 for counting the other.
    expect(days[0]).toMatchObject({ on: day('2026-05-10'), minutes: 75, steps: ['give-larvae', 'count-taken'] });
    expect(days[0]?.materials).toContainEqual({ material: 'transfer tool', jobs: 1 });
  });

  it('leaves out days without jobs, jobs done, and what is only expected', () => {
    const steps = timetableOf({ done: [{ step: 'give-larvae', on: day('2026-05-10') }] }).steps;
    expect(sumWork(steps, day('2026-05-10'), day('2026-05-10'))).toEqual([]);
    expect(sumWork(steps, day('2026-05-22'), day('2026-05-22'))).toEqual([]);
  });

  it('runs by day over a week', () => {
    const days = sumWork(timetableOf().steps, day('2026-05-09'), day('2026-05-16')).map((one) => one.on);
    expect(days).toEqual([
      day('2026-05-09'),
      day('2026-05-10'),
      day('2026-05-11'),
      day('2026-05-14'),
      day('2026-05-15'),
    ]);
  });
});

describe('sumMaterials', () => {
  it('counts the jobs that ask for each', () => {
    expect(sumMaterials([{ materials: ['labels', 'pollen'] }, { materials: ['labels'] }])).toEqual([
      { material: 'labels', jobs: 2 },
      { material: 'pollen', jobs: 1 },
    ]);
  });
});
