import { type Caste, DEVELOPMENT } from '../../../shared/biology/development.ts';
import { addHours, type CivilHours } from '../../../shared/kernel/civil-time.ts';
import { warmthShiftHours } from './emergence-hours.ts';

export interface DevelopmentTimes {
  readonly hatchesAt: CivilHours;
  readonly sealedAt: CivilHours;
  readonly emergesAt: CivilHours;
}

/**
 * When an egg laid at `laidAt` hatches, is sealed and emerges; elapsed hours on the yard's clock.
 * @param sealedStageCelsius shifts the emergence of queens only: the 2015 study measured no other caste. null = 34.5 °C.
 */
export function developmentClock(
  caste: Caste,
  laidAt: CivilHours,
  sealedStageCelsius: number | null,
): DevelopmentTimes {
  const { hatches, sealed, emerges } = DEVELOPMENT[caste];
  const shift = caste === 'queen' ? warmthShiftHours(sealedStageCelsius) : 0;
  return {
    hatchesAt: addHours(laidAt, hatches.value),
    sealedAt: addHours(laidAt, sealed.value),
    emergesAt: addHours(laidAt, emerges.value + shift),
  };
}
