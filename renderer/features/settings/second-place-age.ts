import { dayOfIso, type IsoDay } from '../../../shared/kernel/day.ts';

/** Days after which a second place is worth a reminder: common practice, no source. */
const OLD_AFTER = 14;

/** How many days old the newest copy there is, when that is too many; else null. Days of the instant are those in UTC. */
export function tooOld(newestAt: string | null, today: IsoDay): number | null {
  if (newestAt === null) return null;
  const days = dayOfIso(today) - dayOfIso(newestAt.slice(0, 10));
  return days > OLD_AFTER ? days : null;
}
