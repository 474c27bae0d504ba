import { useState } from 'react';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

interface NumberFieldProps {
  readonly label: string;
  readonly value: number | null;
  readonly most: number;
  readonly hint?: string;
  readonly onChange: (value: number | null) => void;
}

/** A whole number from 1, or empty. What was typed stays, also when it is no number. */
export function NumberField({ label, value, most, hint, onChange }: NumberFieldProps) {
  const words = useWords();
  const [typed, setTyped] = useState(value === null ? '' : String(value));
  const number = wholeNumber(typed, most);
  return (
    <TextField
      label={label}
      numeric
      value={typed}
      hint={hint}
      problem={number === 'unclear' ? words.forecast.form.wholeTo(most) : null}
      onChange={(text) => {
        setTyped(text);
        const read = wholeNumber(text, most);
        if (read !== 'unclear') onChange(read);
      }}
    />
  );
}

function wholeNumber(text: string, most: number): number | null | 'unclear' {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  if (!/^\d{1,4}$/.test(trimmed)) return 'unclear';
  const number = Number(trimmed);
  return number >= 1 && number <= most ? number : 'unclear';
}
