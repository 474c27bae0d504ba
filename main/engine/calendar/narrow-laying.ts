import type { Day } from '../../../shared/kernel/day.ts';
import type { CalendarFact, Contradiction, Seen } from '../../../shared/model/timetable.ts';
import type { LayingInterval } from './laying-interval.ts';
import { type LayingBounds, sightingBounds } from './sighting-bounds.ts';

export interface NarrowedLaying {
  readonly laying: LayingInterval;
  /** The sighting that decides the forecast; null when none narrows it. */
  readonly decidedBy: CalendarFact | null;
  readonly contradictions: readonly Contradiction[];
  /** Hours from noon of day 0 by which a queen was out; null when none was seen. */
  readonly emergedBy: number | null;
}

interface BoundedFact {
  readonly fact: CalendarFact;
  readonly bounds: LayingBounds;
}

/**
 * The plausible laying times that are left after all sightings: the intersection of what each allows. It never grows,
 * and the order of the sightings does not matter. When no time is left, two facts exclude each other: all such pairs
 * are named, and until the person chooses, the older reading is used, because only a queen out too early can destroy
 * the set.
 * @param base the fact the usual interval rests on, named in a contradiction.
 */
export function narrowLaying(
  usual: LayingInterval,
  base: CalendarFact,
  seen: readonly Seen[],
  dayZero: Day,
): NarrowedLaying {
  if (seen.length === 0) return { laying: usual, decidedBy: null, contradictions: [], emergedBy: null };
  const sighted = inFixedOrder(seen).map(
    (one): BoundedFact => ({
      fact: { kind: 'seen', id: one.id, what: one.what, on: one.on },
      bounds: sightingBounds(one, dayZero),
    }),
  );
  const usualBounds = { notBefore: usual.oldest, notAfter: usual.youngest, emergedBy: null };
  const all = [{ fact: base, bounds: usualBounds }, ...sighted];
  const oldest = all.reduce((most, one) =>
    (one.bounds.notBefore ?? -Infinity) > (most.bounds.notBefore ?? -Infinity) ? one : most,
  );
  const youngest = all.reduce((least, one) =>
    (one.bounds.notAfter ?? Infinity) < (least.bounds.notAfter ?? Infinity) ? one : least,
  );
  const notBefore = oldest.bounds.notBefore ?? usual.oldest;
  const notAfter = youngest.bounds.notAfter ?? usual.youngest;
  const contradictions = excludingPairs(all);
  const first = contradictions.length > 0 ? notAfter : notBefore;
  const decides = contradictions.length > 0 ? youngest : oldest.fact === base ? youngest : oldest;
  return {
    laying: { oldest: first, typical: clamp(usual.typical, first, notAfter), youngest: notAfter },
    decidedBy: decides.fact === base ? null : decides.fact,
    contradictions,
    emergedBy: leastOf(all.map((one) => one.bounds.emergedBy)),
  };
}

function inFixedOrder(seen: readonly Seen[]): readonly Seen[] {
  return seen.toSorted((a, b) => a.on - b.on || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

function excludingPairs(facts: readonly BoundedFact[]): readonly Contradiction[] {
  return facts.flatMap((one, index) =>
    facts
      .slice(index + 1)
      .filter((other) => excludes(one.bounds, other.bounds))
      .map((other) => ({ one: one.fact, other: other.fact })),
  );
}

const excludes = (a: LayingBounds, b: LayingBounds): boolean =>
  (a.notBefore !== null && b.notAfter !== null && a.notBefore > b.notAfter) ||
  (b.notBefore !== null && a.notAfter !== null && b.notBefore > a.notAfter);

const clamp = (hours: number, least: number, most: number): number => Math.min(Math.max(hours, least), most);

function leastOf(values: readonly (number | null)[]): number | null {
  return values.reduce(
    (least, value) => (value === null ? least : least === null ? value : Math.min(least, value)),
    null,
  );
}
