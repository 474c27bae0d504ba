import { createContext, useContext } from 'react';
import type { Day, IsoDay } from '../../shared/kernel/day.ts';
import { type DateOrder, fullDay, shortDay } from '../../shared/text/day-text.ts';
import { english, type Words } from '../../shared/text/english/english.ts';

export interface Wording {
  readonly words: Words;
  readonly dateOrder: DateOrder;
  /** The day the workbook reckons with. */
  readonly today: IsoDay;
}

export const WordingContext = createContext<Wording>({ words: english, dateOrder: 'day-first', today: '1970-01-01' });

export const useWords = (): Words => useContext(WordingContext).words;

export const useToday = (): IsoDay => useContext(WordingContext).today;

/** Days as the person wants them written. */
export function useDays() {
  const { dateOrder, today } = useContext(WordingContext);
  return {
    order: dateOrder,
    today,
    short: (day: Day | IsoDay) => shortDay(day, dateOrder),
    full: (day: Day | IsoDay) => fullDay(day, dateOrder),
  };
}
