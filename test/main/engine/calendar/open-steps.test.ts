import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findDueSteps } from '../../../../main/engine/calendar/expand-batches.ts';
import { canBeDropped, isOpenJob } from '../../../../main/engine/calendar/open-steps.ts';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { reserveBoxes } from '../../../../main/engine/calendar/reserve-boxes.ts';
import { stepState } from '../../../../main/engine/calendar/step-state.ts';
import { streamDays } from '../../../../main/engine/calendar/stream-picture.ts';
import { sumWork } from '../../../../main/engine/calendar/sum-work.ts';
import { emptyTally } from '../../../../main/engine/yield/batch-tally.ts';
import { STEPS, type Step } from '../../../../shared/model/step.ts';
import { anyInput } from '../../../builders/any-calendar-input.ts';
import { aCalendarInput, day, stepOf, timetableOf } from '../../../builders/calendar.ts';

const dropped = (step: Step) => ({ dropped: [{ step, on: day('2026-05-14') }] });
const [FROM, TO] = [day('2026-05-01'), day('2026-07-31')];

test('a dropped job moves no step of any timetable', () => {
  fc.assert(
    fc.property(anyInput, fc.subarray([...STEPS]), (input, steps) => {
      const plain = planTimetable(input);
      const without = planTimetable({ ...input, dropped: steps.map((step) => ({ step, on: day('2026-05-14') })) });
      if (!plain.ok || !without.ok) return plain.ok === without.ok;
      const days = (one: typeof plain.value) => [
        one.steps.map(({ step, earliest, expected, latest }) => [step, earliest, expected, latest]),
        one.handsOff,
        one.emergence,
      ];
      expect(days(without.value)).toEqual(days(plain.value));
      return true;
    }),
    { numRuns: 200 },
  );
});

test('a dropped job is no work, is not due and hangs no flag, and one done after all is done', () => {
  const [open, without] = [timetableOf(), timetableOf(dropped('count-taken'))];
  const work = (of: typeof open) => sumWork(of.steps, FROM, TO).flatMap(({ steps }) => steps);
  expect(work(open).filter((step) => !work(without).includes(step))).toEqual(['count-taken']);
  const due = (input: object) =>
    findDueSteps([{ id: 'b', input: aCalendarInput(input) }], FROM, TO).map(({ step }) => step.step);
  expect(due({})).toContain('count-taken');
  expect(due(dropped('count-taken'))).not.toContain('count-taken');
  const flags = (of: typeof open) => streamDays(of, emptyTally('b'), null).flags.map(({ step }) => step);
  expect(flags(open)).toContain('count-taken');
  expect(flags(without)).not.toContain('count-taken');
  const done = timetableOf({ ...dropped('count-taken'), done: [{ step: 'count-taken', on: day('2026-05-11') }] });
  expect(stepOf(done, 'count-taken')).toMatchObject({ doneOn: day('2026-05-11'), droppedOn: null });
  const state = (of: typeof open) => stepState(stepOf(of, 'count-taken'), of.steps, day('2026-05-20'));
  expect([open, without, done].map(state)).toEqual(['late', 'dropped', 'done']);
});

test('what biology needs cannot be dropped: cells of a cell bar must leave, those of an emergency comb may stay', () => {
  expect(canBeDropped(stepOf(timetableOf(), 'place-cells'))).toBe(false);
  expect(canBeDropped(stepOf(timetableOf(), 'count-sealed'))).toBe(true);
  expect(canBeDropped(stepOf(timetableOf(), 'emergence'))).toBe(false);
  const emergency = { method: 'emergency-cells', larvaAgeHours: null } as const;
  const anchor = { step: 'remove-queen', on: day('2026-05-10') } as const;
  expect(canBeDropped(stepOf(timetableOf({ ...emergency, anchor }), 'place-cells'))).toBe(true);
  const stays = timetableOf({ ...emergency, anchor, ...dropped('place-cells') });
  expect(isOpenJob(stepOf(stays, 'place-cells'))).toBe(false);
  // Cells that stay where they are take no box.
  const boxes = [{ id: 'K01', freeFrom: day('2026-05-01') }];
  const batch = { id: 'b', timetable: stays, builderId: null, breederId: null, cells: 1, barIds: [] };
  expect(reserveBoxes(boxes, [batch])).toEqual(boxes);
});
