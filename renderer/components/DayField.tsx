import { useEffect, useState } from 'react';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { fromToday } from '../../shared/text/day-text.ts';
import { parseDay } from '../../shared/text/parse-day.ts';
import { TextField } from './TextField.tsx';
import { useDays, useWords } from './words.ts';

interface DayFieldProps {
  readonly label: string;
  readonly value: IsoDay | null;
  /** null while the text is no day (or empty). */
  readonly onChange: (value: IsoDay | null) => void;
  readonly problem?: string | null;
}

/** A day typed as people write it; below it stands what was understood, with its weekday. */
export function DayField({ label, value, onChange, problem }: DayFieldProps) {
  const days = useDays();
  const words = useWords();
  const [typed, setTyped] = useState(value ? days.short(value) : '');
  const [editing, setEditing] = useState(false);
  useEffect(() => {
    if (!editing && value) setTyped(days.short(value));
  }, [editing, value, days.short]);
  const understood = parseDay(withoutWeekday(typed), dayOfIso(days.today), days.order);
  const unclear = typed.trim() !== '' && understood === null;
  return (
    <TextField
      label={label}
      value={typed}
      onChange={(text) => {
        setEditing(true);
        setTyped(text);
        onChange(parseDay(withoutWeekday(text), dayOfIso(days.today), days.order));
      }}
      onBlur={() => setEditing(false)}
      hint={understood ? `${days.full(understood)}, ${fromToday(understood, days.today)}` : words.day.hint[days.order]}
      problem={problem ?? (unclear && !editing ? words.day.unclear[days.order] : null)}
    />
  );
}

/** "Thu 14 May" was written by us; the weekday is no news. */
const withoutWeekday = (text: string): string => text.replace(/^\s*(mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+/i, '');
