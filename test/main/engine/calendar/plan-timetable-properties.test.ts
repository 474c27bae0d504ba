import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { methodTable } from '../../../../shared/biology/method-steps.ts';
import { addDays } from '../../../../shared/kernel/day.ts';
import type { CalendarInput, Timetable } from '../../../../shared/model/timetable.ts';
import { anyInput, anyPlainInput, anySeenAfter } from '../../../builders/any-calendar-input.ts';

const RUNS = { numRuns: 400 };

/** Null where the input is refused, as random sightings often must be. */
const planned = (input: CalendarInput): Timetable | null => {
  const result = planTimetable(input);
  return result.ok ? result.value : null;
};

function shiftInput(input: CalendarInput, days: number): CalendarInput {
  return {
    ...input,
    anchor: { ...input.anchor, on: addDays(input.anchor.on, days) },
    seen: input.seen.map((seen) => ({ ...seen, on: addDays(seen.on, days) })),
    done: input.done.map((done) => ({ ...done, on: addDays(done.on, days) })),
  };
}

describe('planTimetable, for any input', () => {
  it('keeps earliest <= expected <= latest, whole days, and the deadline before the earliest queen', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const timetable = planned(input);
        if (!timetable) return;
        for (const { earliest, expected, latest } of timetable.steps) {
          expect(earliest).toBeLessThanOrEqual(expected);
          expect(expected).toBeLessThanOrEqual(latest);
          expect(Number.isInteger(earliest) && Number.isInteger(expected) && Number.isInteger(latest)).toBe(true);
        }
        expect(timetable.placeDeadline).toBeLessThan(timetable.emergence.earliest);
      }),
      RUNS,
    );
  });

  it('never moves a step that was done', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const timetable = planned(input);
        if (!timetable) return;
        for (const { step, on } of input.done) {
          const dated = timetable.steps.find((one) => one.step === step);
          expect([dated?.earliest, dated?.expected, dated?.latest, dated?.doneOn]).toEqual([on, on, on, on]);
        }
      }),
      RUNS,
    );
  });

  it('shifts every date by n when all facts shift by n', () => {
    fc.assert(
      fc.property(anyInput, fc.integer({ min: -800, max: 800 }), (input, days) => {
        const before = planned(input);
        const after = planned(shiftInput(input, days));
        expect(after === null).toBe(before === null);
        const shifted = before?.steps.map(({ step, earliest, expected, latest }) => [
          step,
          earliest + days,
          expected + days,
          latest + days,
        ]);
        expect(after?.steps.map(({ step, earliest, expected, latest }) => [step, earliest, expected, latest])).toEqual(
          shifted,
        );
      }),
      RUNS,
    );
  });

  it('shifts every open date by n when only the anchor shifts', () => {
    fc.assert(
      fc.property(anyPlainInput, fc.integer({ min: -400, max: 400 }), (input, days) => {
        const before = planned(input);
        const after = planned({ ...input, anchor: { ...input.anchor, on: addDays(input.anchor.on, days) } });
        expect(after?.steps.map((step) => step.expected)).toEqual(before?.steps.map((step) => step.expected + days));
        expect(after?.placeDeadline).toBe((before?.placeDeadline ?? 0) + days);
      }),
      RUNS,
    );
  });

  it('does not care in which order things were seen, done or typed', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const turned = { ...input, seen: input.seen.toReversed(), done: input.done.toReversed() };
        expect(planned(turned)).toEqual(planned(input));
      }),
      RUNS,
    );
  });

  it('never widens the window of a job, event or warning when one more thing is seen', () => {
    fc.assert(
      fc.property(
        anyInput.chain((input) => fc.tuple(fc.constant(input), anySeenAfter(input.anchor.on, 'seen-more'))),
        ([input, more]) => {
          const before = planned(input);
          const after = planned({ ...input, seen: [...input.seen, more] });
          if (!before || !after) return;
          // A comb seen empty or laid before any larva was given moves day 0: that is another reckoning, not a wider one.
          if (after.larvaeGivenOn !== before.larvaeGivenOn) return;
          for (const step of after.steps) {
            // A hands-off span is a rule, not an uncertainty: it may grow when cells turn out to be younger.
            if (step.kind === 'hands-off') continue;
            const was = before.steps.find((one) => one.step === step.step);
            expect([step.step, step.latest - step.earliest]).toSatisfy(
              ([, width]) => width <= (was ? was.latest - was.earliest : 0),
            );
          }
        },
      ),
      { numRuns: 1500 },
    );
  });

  it('keeps the new window of emergence inside the old one while nothing contradicts', () => {
    fc.assert(
      fc.property(
        anyPlainInput.chain((input) => fc.tuple(fc.constant(input), anySeenAfter(input.anchor.on, 'seen-more'))),
        ([input, more]) => {
          const before = planned(input);
          const after = planned({ ...input, seen: [more] });
          if (!before || !after || after.contradictions.length > 0 || after.larvaeGivenOn !== before.larvaeGivenOn)
            return;
          // An age that nobody noted is an assumption, and may give way to what was seen.
          if (input.larvaAgeHours === null && methodTable(input.method, input.comb).start === 'given') return;
          expect(after.emergence.earliest).toBeGreaterThanOrEqual(before.emergence.earliest);
          expect(after.emergence.latest).toBeLessThanOrEqual(before.emergence.latest);
        },
      ),
      { numRuns: 1500 },
    );
  });
});
