import fc from 'fast-check';
import { planTimetable } from '../../main/engine/calendar/plan-timetable.ts';
import { methodTable } from '../../shared/biology/method-steps.ts';
import { addDays, type Day } from '../../shared/kernel/day.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../shared/model/method.ts';
import { OBSERVATION_KINDS } from '../../shared/model/step.ts';
import type { CalendarInput, Seen, StepDay } from '../../shared/model/timetable.ts';

/** Days from 2000 to 2059. */
export const anyDay: fc.Arbitrary<Day> = fc
  .integer({ min: 10_957, max: 32_871 })
  .map((number) => addDays(0 as Day, number));

const anyHours = fc
  .tuple(fc.integer({ min: 0, max: 96 }), fc.integer({ min: 0, max: 96 }))
  .map(([a, b]): readonly [number, number] => [Math.min(a, b), Math.max(a, b)]);

/** A timetable's input with nothing seen or done yet. */
export const anyPlainInput: fc.Arbitrary<CalendarInput> = fc
  .record({
    method: fc.constantFrom(...METHODS),
    comb: fc.constantFrom(...COMBS),
    builderType: fc.constantFrom(...BUILDER_TYPES),
    boxType: fc.option(fc.constantFrom(...BOX_TYPES)),
    on: anyDay,
    anchorPick: fc.nat(10),
    larvaAgeHours: fc.option(anyHours),
    sealedStageCelsius: fc.option(fc.double({ min: 31, max: 37, noNaN: true })),
  })
  .map(({ anchorPick, on, ...choice }) => {
    const steps = methodTable(choice.method, choice.comb).fixedBy;
    const step = steps[anchorPick % steps.length] ?? 'give-larvae';
    return { ...choice, anchor: { step, on }, seen: [], done: [], moved: [] };
  });

/** A sighting somewhere between the anchor and two months later, which may well contradict others. */
export const anySeenAfter = (anchor: Day, id: string): fc.Arbitrary<Seen> =>
  fc.record({
    id: fc.constant(id),
    what: fc.constantFrom(...OBSERVATION_KINDS),
    on: fc.integer({ min: 0, max: 60 }).map((days) => addDays(anchor, days)),
    hours: anyHours,
  });

export const anySeenList = (anchor: Day): fc.Arbitrary<readonly Seen[]> =>
  fc
    .integer({ min: 0, max: 5 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => anySeenAfter(anchor, `seen-${index}`))));

/** The input with things seen, and with its first jobs done on the day they were expected or up to two days later. */
export const anyInput: fc.Arbitrary<CalendarInput> = anyPlainInput.chain((input) =>
  fc
    .record({ seen: anySeenList(input.anchor.on), doneJobs: fc.nat(8), delay: fc.nat(2) })
    .map(({ seen, doneJobs, delay }) => ({
      ...input,
      seen,
      done: firstJobsDone(input, doneJobs, delay),
    })),
);

function firstJobsDone(input: CalendarInput, count: number, delay: number): readonly StepDay[] {
  const planned = planTimetable(input);
  if (!planned.ok) return [];
  const jobs = planned.value.steps.filter((step) => step.kind === 'job').slice(0, count);
  return jobs.map((job) => ({ step: job.step, on: addDays(job.expected, delay) }));
}
