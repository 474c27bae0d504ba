import { createContext, useContext } from 'react';
import type { Day, IsoDay, WeekStart } from '../../shared/kernel/day.ts';
import { RESULT_KEYS, type ResultKey } from '../../shared/model/look-key.ts';
import { type DateOrder, datedDay, fullDay, shortDay } from '../../shared/text/day-text.ts';
import { celsiusText, type TemperatureUnit } from '../../shared/text/degrees.ts';
import { english, type Words } from '../../shared/text/english/english.ts';

export interface Wording {
  readonly words: Words;
  readonly dateOrder: DateOrder;
  readonly weekStart: WeekStart;
  readonly temperature: TemperatureUnit;
  readonly resultKeys: readonly ResultKey[];
  /** The day the workbook reckons with. */
  readonly today: IsoDay;
}

export const WordingContext = createContext<Wording>({
  words: english,
  dateOrder: 'day-first',
  weekStart: 'monday',
  temperature: 'celsius',
  resultKeys: RESULT_KEYS,
  today: '1970-01-01',
});

export const useWords = (): Words => useContext(WordingContext).words;

export const useToday = (): IsoDay => useContext(WordingContext).today;

/** Days as the person wants them written. */
export function useDays() {
  const { dateOrder, weekStart, today } = useContext(WordingContext);
  return {
    order: dateOrder,
    weekStart,
    today,
    short: (day: Day | IsoDay) => shortDay(day, dateOrder),
    /** Short, and with its year where that is not the present one. */
    dated: (day: IsoDay) => datedDay(day, today, dateOrder),
    full: (day: Day | IsoDay) => fullDay(day, dateOrder),
  };
}

/** The keys of the typing grid as the person has them. */
export const useResultKeys = (): readonly ResultKey[] => useContext(WordingContext).resultKeys;

export const useTemperatureUnit = (): TemperatureUnit => useContext(WordingContext).temperature;

/** A temperature kept in Celsius, in the degrees the person reads. */
export function useDegrees(): (celsius: number) => string {
  const { temperature } = useContext(WordingContext);
  return (celsius) => celsiusText(celsius, temperature);
}
