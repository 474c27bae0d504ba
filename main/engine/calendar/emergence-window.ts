import { DEVELOPMENT, TARGET_LARVA_HOURS } from '../../../shared/biology/development.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { EmergenceWindow, HourRange } from '../../../shared/model/timetable.ts';
import { emergenceDays } from './emergence-hours.ts';

/**
 * When queens emerge from larvae given on a day, and the last safe day for moving their cells.
 * @param larvaAgeHours hours since hatching of youngest and oldest; null = 12 to 24.
 * @param sealedStageCelsius warmth around the sealed cells; null = 34.5 °C.
 */
export function emergenceWindow(
  larvaeGivenOn: Day,
  larvaAgeHours: HourRange | null,
  sealedStageCelsius: number | null,
): EmergenceWindow & { readonly placeDeadline: Day } {
  const [youngest, oldest] = larvaAgeHours ?? [TARGET_LARVA_HOURS.youngest, TARGET_LARVA_HOURS.oldest];
  const hatches = DEVELOPMENT.queen.hatches.value;
  const laying = { oldest: -(hatches + oldest), typical: -(hatches + oldest), youngest: -(hatches + youngest) };
  const days = emergenceDays(laying, sealedStageCelsius);
  return {
    earliest: addDays(larvaeGivenOn, days.earliest),
    expected: addDays(larvaeGivenOn, days.expected),
    latest: addDays(larvaeGivenOn, days.latest),
    placeDeadline: addDays(larvaeGivenOn, days.placeDeadline),
  };
}
