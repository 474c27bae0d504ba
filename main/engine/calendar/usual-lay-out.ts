import type { HourRange } from '../../../shared/model/timetable.ts';
import type { Plan } from './compile-plan.ts';
import { emergenceDays } from './emergence-hours.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { usualLaying } from './laying-interval.ts';

const NOTHING_KNOWN = { placed: null, emerged: null };

/** The days already laid out for one plan: most batches note neither age nor warmth. */
interface KnownLayOuts {
  readonly usual: LaidOut;
  readonly special: Map<string, LaidOut>;
}
const layOuts = new WeakMap<Plan, KnownLayOuts>();

/** The days of a plan before anything is seen or done, from day 0. Kept, since many batches share them. */
export function usualLayOut(plan: Plan, larvaHours: HourRange | null, celsius: number | null): LaidOut {
  const known = layOuts.get(plan) ?? firstLayOut(plan);
  if (larvaHours === null && celsius === null) return known.usual;
  const key = `${larvaHours?.[0]}|${larvaHours?.[1]}|${celsius}`;
  const found = known.special.get(key);
  if (found) return found;
  const laidOut = layOutFor(plan, larvaHours, celsius);
  known.special.set(key, laidOut);
  return laidOut;
}

function firstLayOut(plan: Plan): KnownLayOuts {
  const known = { usual: layOutFor(plan, null, null), special: new Map<string, LaidOut>() };
  layOuts.set(plan, known);
  return known;
}

const layOutFor = (plan: Plan, larvaHours: HourRange | null, celsius: number | null): LaidOut =>
  layOut(plan, emergenceDays(usualLaying(plan.table, larvaHours), celsius), NOTHING_KNOWN);
