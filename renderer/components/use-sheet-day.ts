import { useState } from 'react';
import type { IsoDay } from '../../shared/kernel/day.ts';
import { useToday } from './words.ts';

/** The day of a sheet as it is typed, and the last that could be read: while a day is mistyped the rows stay. */
export function useSheetDay() {
  const today = useToday();
  const [typed, setTyped] = useState<IsoDay | null>(today);
  const [day, setDay] = useState<IsoDay>(today);
  const set = (value: IsoDay | null) => {
    setTyped(value);
    if (value !== null) setDay(value);
  };
  return { typed, day, set };
}
