import type { FlightView } from '../../shared/contract/weather.ts';
import { useDays, useFirstWords } from './words.ts';

/** How the weather has let the queens of a batch fly so far, and what it does to the late warning. */
export function FlightLines({ flight }: { flight: FlightView }) {
  const { weather: words } = useFirstWords();
  const days = useDays();
  const parts = (['good', 'possible', 'poor', 'unknown'] as const).flatMap((rating) =>
    flight.days[rating] > 0 ? [words.days[rating](flight.days[rating])] : [],
  );
  return (
    <>
      {words.flights(days.short(flight.from), days.short(flight.to))} {words.sofar(parts.join(', '))}{' '}
      {flight.putOffDays > 0
        ? words.putOff(flight.putOffDays, days.short(flight.lateOn))
        : words.late(days.short(flight.lateOn))}
    </>
  );
}
