import type { BoxStanding, StandingLook } from '../../main/engine/boxes/box-standing.ts';
import { addDays, type Day, dayOfIso } from '../../shared/kernel/day.ts';
import type { LookResult } from '../../shared/model/look.ts';

/** A box whose cell was put in on 14 May and whose queen is expected out on 16 May 2026: day 0. */
export const EMERGENCE_ON = dayOfIso('2026-05-16');
export const dayAfter = (age: number): Day => addDays(EMERGENCE_ON, age);
export const seen = (age: number, result: LookResult, strength: number | null = null): StandingLook => ({
  on: dayAfter(age),
  result,
  strength,
});

/** `age` is today's day after emergence; days of the looks and steps as in the usual timetable. */
export const aStanding = (
  age: number,
  looks: readonly StandingLook[],
  changes: Partial<BoxStanding> = {},
): BoxStanding => ({
  today: dayAfter(age),
  placedOn: dayAfter(-2),
  emergenceOn: EMERGENCE_ON,
  looks,
  firstLook: { earliest: dayAfter(10), expected: dayAfter(12) },
  emergenceCheckOn: dayAfter(2),
  sealedBroodLookOn: dayAfter(21),
  lateOn: dayAfter(21),
  giveUpOn: dayAfter(28),
  handsOff: [{ from: dayAfter(3), to: dayAfter(10) }],
  cellsComing: null,
  ...changes,
});
