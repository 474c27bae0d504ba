import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandBatches, findDueSteps } from '../../../../main/engine/calendar/expand-batches.ts';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import type { CalendarInput } from '../../../../shared/model/timetable.ts';
import { anyInput, anyPlainInput } from '../../../builders/any-calendar-input.ts';
import { aCalendarInput, day } from '../../../builders/calendar.ts';

const numbered = (inputs: readonly CalendarInput[]) => inputs.map((input, index) => ({ id: `batch-${index}`, input }));
const stepsOf = (input: CalendarInput) => {
  const planned = planTimetable(input);
  return planned.ok ? planned.value.steps : [];
};

describe('expandBatches', () => {
  it('comes to the days of planTimetable, step by step, for plain batches and for others', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(anyPlainInput, anyInput), { maxLength: 8 }), (inputs) => {
        const { days, starts, names } = expandBatches(numbered(inputs));
        inputs.forEach((input, index) => {
          const steps = stepsOf(input);
          const own = [...days.slice(starts[index], starts[index + 1])];
          expect(own).toEqual(steps.flatMap((step) => [step.earliest, step.expected, step.latest]));
          expect(names[index]?.rows.map((row) => row.step)).toEqual(steps.map((step) => step.step));
        });
      }),
      { numRuns: 200 },
    );
  });

  it('has no steps for a batch whose facts are refused', () => {
    const refused = aCalendarInput({ anchor: { step: 'cage-queen', on: day('2026-05-10') } });
    const turned = aCalendarInput({ larvaAgeHours: [30, 10] });
    const { starts } = expandBatches(numbered([refused, aCalendarInput(), turned]));
    expect(starts[1]).toBe(0);
    expect(starts[2]).toBe(starts[3]);
    expect(starts[2]).toBeGreaterThan(0);
  });
});

describe('findDueSteps', () => {
  it('finds what planning every batch would find', () => {
    fc.assert(
      fc.property(
        fc.array(anyInput, { maxLength: 6 }),
        fc.integer({ min: -20, max: 70 }),
        fc.nat(7),
        (inputs, shift, length) => {
          const from = addDays(inputs[0]?.anchor.on ?? day('2026-05-10'), shift);
          const to = addDays(from, length);
          const found = findDueSteps(numbered(inputs), from, to).map(({ batchId, step }) => [batchId, step.step]);
          const expected = inputs.flatMap((input, index) =>
            stepsOf(input)
              .filter((step) => step.doneOn === null && step.earliest <= to)
              .filter((step) => step.latest >= from || step.kind === 'job')
              .map((step) => [`batch-${index}`, step.step]),
          );
          expect(found).toEqual(expected);
        },
      ),
    );
  });

  it('plans no batch whose steps are all done or far off', () => {
    const all = stepsOf(aCalendarInput()).map(({ step, expected }) => ({ step, on: expected }));
    const batches = numbered([aCalendarInput({ done: all })]);
    expect(findDueSteps(batches, day('2026-05-20'), day('2026-05-20'))).toEqual([]);
  });

  it('keeps a job that is late, and lets go of what was only expected', () => {
    const batches = numbered([aCalendarInput({ done: [{ step: 'count-taken', on: day('2026-05-11') }] })]);
    const steps = findDueSteps(batches, day('2026-05-23'), day('2026-05-23')).map(({ step }) => step.step);
    expect(steps).toContain('place-cells');
    expect(steps).toContain('emergence');
    expect(steps).not.toContain('hands-off-cells');
    expect(steps).not.toContain('count-taken');
  });
});
