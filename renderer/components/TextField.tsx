import { InputBase } from '@mui/material';
import type { KeyboardEvent, ReactNode, Ref } from 'react';
import { Field } from './Field.tsx';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: ReactNode;
  readonly problem?: string | null;
  readonly required?: boolean;
  readonly numeric?: boolean;
  readonly multiline?: boolean;
  readonly list?: string;
  readonly onBlur?: () => void;
  readonly onKeyDown?: (event: KeyboardEvent<HTMLElement>) => void;
  readonly inputRef?: Ref<HTMLInputElement>;
  readonly autoFocus?: boolean;
}

/** A line (or a few lines) of text. */
export function TextField(props: TextFieldProps) {
  const { label, hint, problem, value, onChange, required, numeric, multiline, list, onBlur, onKeyDown } = props;
  return (
    <Field label={label} hint={hint} problem={problem ?? null}>
      {(control) => (
        <InputBase
          className="control"
          id={control.id}
          value={value}
          multiline={multiline ?? false}
          minRows={multiline ? 2 : undefined}
          onChange={(event) => onChange(event.target.value)}
          onBlur={onBlur}
          onKeyDown={onKeyDown}
          inputRef={props.inputRef}
          autoFocus={props.autoFocus ?? false}
          slotProps={{
            input: {
              'aria-describedby': control['aria-describedby'],
              'aria-invalid': control['aria-invalid'],
              'aria-required': required ? true : undefined,
              inputMode: numeric ? 'numeric' : undefined,
              list,
              autoComplete: 'off',
            },
          }}
        />
      )}
    </Field>
  );
}
