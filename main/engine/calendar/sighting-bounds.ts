import { DEVELOPMENT } from '../../../shared/biology/development.ts';
import { SIGHTING_HOURS } from '../../../shared/biology/sightings.ts';
import type { Day } from '../../../shared/kernel/day.ts';
import { unreachable } from '../../../shared/kernel/unreachable.ts';
import type { Seen } from '../../../shared/model/timetable.ts';

/** What a sighting allows for the laying, hours from noon of day 0; null = it says nothing on that side. */
export interface LayingBounds {
  readonly notBefore: number | null;
  readonly notAfter: number | null;
  /** Hours from noon of day 0 by which a queen had left her cell; null = nothing said. */
  readonly emergedBy: number | null;
}

const NOTHING: LayingBounds = { notBefore: null, notAfter: null, emergedBy: null };

/** Turns one sighting, made about noon of its day, into bounds on the laying time. */
export function sightingBounds(seen: Seen, dayZero: Day): LayingBounds {
  const at = (seen.on - dayZero) * 24;
  const queen = DEVELOPMENT.queen;
  const outBy = (hours: number): LayingBounds => ({
    ...NOTHING,
    notAfter: hours - queen.emerges.range[0],
    emergedBy: hours,
  });
  switch (seen.what) {
    case 'eggs-first-seen':
      return { ...NOTHING, notBefore: at - SIGHTING_HOURS.betweenLooks.value };
    case 'larva-size':
    case 'larva-age-note': {
      if (!seen.hours) return NOTHING;
      const [youngest, oldest] = seen.hours;
      const hatched = at - queen.hatches.value;
      return { ...NOTHING, notBefore: hatched - oldest, notAfter: hatched - youngest };
    }
    case 'cells-open':
      return { ...NOTHING, notBefore: at - queen.sealed.range[1] };
    case 'cells-sealed': {
      const [least, most] = seen.hours ?? [0, null];
      return {
        ...NOTHING,
        notBefore: most === null ? null : at - most - queen.sealed.range[1],
        notAfter: at - least - queen.sealed.range[0],
      };
    }
    case 'cells-browned':
      return { ...NOTHING, notAfter: at - SIGHTING_HOURS.laidToBrowned.value };
    case 'emerged-hole':
    case 'queen-seen':
      return outBy(at);
    case 'first-eggs':
      return outBy(at - SIGHTING_HOURS.emergedToEggs.value);
    case 'sealed-brood':
      return outBy(at - SIGHTING_HOURS.emergedToEggs.value - SIGHTING_HOURS.eggToSealedBrood.value);
    case 'frame-not-drawn':
    case 'comb-filled-with-nectar':
    case 'larvae-too-old':
    case 'cells-torn-down':
    case 'job-done-on-another-day':
      return NOTHING;
    default:
      return unreachable(seen.what);
  }
}
