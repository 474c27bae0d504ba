import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SaveWeather } from '../../../shared/contract/weather.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { WeatherDay } from '../../../shared/model/weather.ts';
import type { Desk } from '../operation.ts';

/** Notes the weather of a day; a day with nothing noted is taken out again. */
export function saveWeather(
  { workbook }: Desk,
  noted: z.infer<typeof SaveWeather>,
): Result<WeatherDay | null, Refusal> {
  return workbook.change(
    () => ({ did: 'save-weather', on: noted.day }),
    ({ weather }) => {
      // One row a day: the day is its name.
      const row: WeatherDay = { id: noted.day, ...noted };
      const known = weather.between(noted.day, noted.day)[0];
      const { day: _, ...facts } = noted;
      if (Object.values(facts).every((fact) => fact === null)) {
        if (known) weather.remove(known.id);
        return ok(null);
      }
      if (known) weather.update({ ...row, id: known.id });
      else weather.insert(row);
      return ok(row);
    },
  );
}
