import { DEVELOPMENT, EMERGENCY_LARVAE, MOST_LARVA_HOURS } from '../../../shared/biology/development.ts';
import type { MethodTable } from '../../../shared/biology/method-steps.ts';
import { unreachable } from '../../../shared/kernel/unreachable.ts';
import type { HourRange } from '../../../shared/model/timetable.ts';

/**
 * When the eggs of the raised larvae were laid, in hours from noon of day 0 (negative = before).
 * Larvae are taken to be given about noon: facts ask for late morning to mid-afternoon, and the hour is seldom noted.
 */
export interface LayingInterval {
  /** The earliest plausible laying: the oldest larva. */
  readonly oldest: number;
  /** The larva that decides the expected day. Where a person chose the larvae it is the oldest: the first queen out ends the wait. */
  readonly typical: number;
  readonly youngest: number;
}

/** Day 0 of cells the bees began themselves is put 4 days before sealing, as for a larva of 24 hours. */
export const SEALED_ON_DAY = 4;

/**
 * All that could be given to a builder and become a queen, where nobody noted the age: from an egg laid this very hour
 * to the oldest larva that can still change.
 */
export const ANY_BROOD = { oldest: -(DEVELOPMENT.queen.hatches.value + MOST_LARVA_HOURS), youngest: 0 } as const;

/** What is known of the laying before anything was seen. `larvaHours` = hours since hatching, youngest and oldest. */
export function usualLaying(table: MethodTable, larvaHours: HourRange | null): LayingInterval {
  switch (table.start) {
    case 'given': {
      const [youngest, oldest] = larvaHours ?? table.larvaHours ?? [0, 0];
      const hatches = DEVELOPMENT.queen.hatches.value;
      return { oldest: -(hatches + oldest), typical: -(hatches + oldest), youngest: -(hatches + youngest) };
    }
    case 'queen-lost':
      return {
        oldest: -EMERGENCY_LARVAE.oldestLaidHoursBefore,
        typical: -EMERGENCY_LARVAE.typicalLaidHoursBefore,
        youngest: -EMERGENCY_LARVAE.youngestLaidHoursBefore,
      };
    case 'own-cells': {
      const sealed = DEVELOPMENT.queen.sealed;
      const at = SEALED_ON_DAY * 24;
      return { oldest: at - sealed.range[1], typical: at - sealed.value, youngest: at - sealed.range[0] };
    }
    default:
      return unreachable(table.start);
  }
}
