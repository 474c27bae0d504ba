import type { Day } from '../../../shared/kernel/day.ts';
import type { CalendarFact, Contradiction, Seen } from '../../../shared/model/timetable.ts';
import type { LayingInterval } from './laying-interval.ts';
import { type LayingBounds, sightingBounds } from './sighting-bounds.ts';

export interface NarrowedLaying {
  readonly laying: LayingInterval;
  /** The sighting that decides the forecast; null when none narrows it. */
  readonly decidedBy: CalendarFact | null;
  readonly contradictions: readonly Contradiction[];
  /** True when the facts leave no span but one reading: they exclude each other, or the usual age had to give way. */
  readonly isSingleReading: boolean;
  /** Hours from noon of day 0 by which a queen was out; null when none was seen. */
  readonly emergedBy: number | null;
}

/** What the interval before any sighting rests on. */
export interface LayingBase {
  /** Named in a contradiction. */
  readonly fact: CalendarFact;
  /**
   * What this fact allows, hours from noon of day 0. Wider than the usual interval where nobody noted the age: then the
   * method's usual age is only assumed, and gives way to what was seen.
   */
  readonly allows: Pick<LayingInterval, 'oldest' | 'youngest'>;
}

interface BoundedFact {
  readonly fact: CalendarFact;
  readonly bounds: LayingBounds;
}

/**
 * The plausible laying times that are left after all sightings: the intersection of what each allows. It never grows,
 * and the order of the sightings does not matter. An assumed age that no longer fits gives way to the nearest one that
 * does: cells still open after six days came from younger brood, or were held up by cold. When facts exclude each
 * other, all such pairs are named, and until the person chooses, the older reading is used, because only a queen out
 * too early can destroy the set.
 */
export function narrowLaying(
  usual: LayingInterval,
  base: LayingBase,
  seen: readonly Seen[],
  dayZero: Day,
): NarrowedLaying {
  const nothing = { decidedBy: null, contradictions: [], isSingleReading: false, emergedBy: null };
  if (seen.length === 0) return { laying: usual, ...nothing };
  const sighted = inFixedOrder(seen).map((one) => boundedFact(one, dayZero));
  const oldest = tightest(sighted, ({ notBefore }) => notBefore);
  const youngest = tightest(sighted, ({ notAfter }) => (notAfter === null ? null : -notAfter));
  const notBefore = Math.max(usual.oldest, oldest?.bounds.notBefore ?? -Infinity);
  const notAfter = Math.min(usual.youngest, youngest?.bounds.notAfter ?? Infinity);
  const { oldest: baseFrom, youngest: baseTo } = base.allows;
  const ofBase = { fact: base.fact, bounds: { notBefore: baseFrom, notAfter: baseTo, emergedBy: null } };
  const contradictions = excludingPairs([ofBase, ...sighted]);
  const isSingleReading = notBefore > notAfter;
  const givesWayLater = isSingleReading && contradictions.length === 0 && notBefore > usual.youngest;
  const first = isSingleReading ? (givesWayLater ? notBefore : notAfter) : notBefore;
  const last = isSingleReading ? first : notAfter;
  const narrows = [
    first > usual.oldest && first === oldest?.bounds.notBefore ? oldest : null,
    last < usual.youngest && last === youngest?.bounds.notAfter ? youngest : null,
  ];
  return {
    laying: { oldest: first, typical: clamp(usual.typical, first, last), youngest: last },
    decidedBy: narrows.find((one) => one !== null)?.fact ?? null,
    contradictions,
    isSingleReading,
    emergedBy: leastOf(sighted.map((one) => one.bounds.emergedBy)),
  };
}

const boundedFact = (seen: Seen, dayZero: Day): BoundedFact => ({
  fact: { kind: 'seen', id: seen.id, what: seen.what, on: seen.on },
  bounds: sightingBounds(seen, dayZero),
});

/** The sighting with the largest bound; the first of them where several are equal, null where none has one. */
function tightest(facts: readonly BoundedFact[], boundOf: (bounds: LayingBounds) => number | null): BoundedFact | null {
  return facts.reduce<BoundedFact | null>((best, one) => {
    const bound = boundOf(one.bounds);
    const most = best === null ? null : boundOf(best.bounds);
    return bound !== null && (most === null || bound > most) ? one : best;
  }, null);
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
