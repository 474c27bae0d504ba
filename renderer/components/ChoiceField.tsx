import type { ReactNode } from 'react';
import { Field } from './Field.tsx';
import { takeFirstFocus } from './first-focus.ts';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly text: string;
}

interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly onChange: (value: Value) => void;
  readonly hint?: ReactNode;
  readonly problem?: string | null;
  /** Where typing begins when the page is turned to. */
  readonly firstFocus?: boolean;
}

/** One of a list, by the system's own list: letters jump, arrows walk. */
export function ChoiceField<Value extends string>({
  label,
  value,
  choices,
  onChange,
  hint,
  problem,
  firstFocus = false,
}: ChoiceFieldProps<Value>) {
  return (
    <Field label={label} hint={hint} problem={problem ?? null}>
      {(control) => (
        <select
          {...control}
          className="control"
          ref={firstFocus ? takeFirstFocus : undefined}
          value={value}
          onChange={(event) => {
            const chosen = choices.find((choice) => choice.value === event.target.value);
            if (chosen) onChange(chosen.value);
          }}
        >
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
