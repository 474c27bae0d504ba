import { useEffect, useRef, useState } from 'react';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { parseDay, typedDay, withoutWeekday } from '../../shared/text/parse-day.ts';
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
  const [typed, setTyped] = useState(value ? typedDay(value, dayOfIso(days.today), days.order, words.language) : '');
  const [editing, setEditing] = useState(false);
  useEffect(() => {
    if (!editing && value) setTyped(typedDay(value, dayOfIso(days.today), days.order, words.language));
  }, [editing, value, days.today, days.order, words.language]);
  const understood = parseDay(withoutWeekday(typed), dayOfIso(days.today), days.order);
  const unclear = typed.trim() !== '' && understood === null;
  const input = useRef<HTMLInputElement>(null);
  const complaint = unclear ? words.day.unclear[days.order] : '';
  // A form is not sent while a day in it cannot be read: an optional day would be lost without a word.
  useEffect(() => input.current?.setCustomValidity(complaint), [complaint]);
  return (
    <TextField
      label={label}
      inputRef={input}
      value={typed}
      onChange={(text) => {
        setEditing(true);
        setTyped(text);
        onChange(parseDay(withoutWeekday(text), dayOfIso(days.today), days.order));
      }}
      onBlur={() => setEditing(false)}
      hint={
        understood
          ? `${days.full(understood)}, ${words.day.fromToday(dayOfIso(understood) - dayOfIso(days.today))}`
          : words.day.hint[days.order]
      }
      problem={problem ?? (unclear && !editing ? complaint : null)}
    />
  );
}
