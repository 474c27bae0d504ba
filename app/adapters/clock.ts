import type { Clock } from '../../main/ports/ports.ts';
import { dayOfDate } from '../../shared/kernel/day.ts';

/** The computer's own clock: the civil day where it stands. */
export const computerClock: Clock = {
  today() {
    const now = new Date();
    return dayOfDate({ year: now.getFullYear(), month: now.getMonth() + 1, dayOfMonth: now.getDate() });
  },
  now: () => new Date().toISOString(),
};
