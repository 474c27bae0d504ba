import { type ReactNode, useId } from 'react';

export interface ControlProps {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean | undefined;
}

interface FieldProps {
  readonly label: string;
  readonly hint?: ReactNode;
  /** What is wrong and how to mend it; shown beside the field and read with it. */
  readonly problem?: string | null;
  readonly children: (control: ControlProps) => ReactNode;
}

/** A label above its control, with the hint or the sentence about it below. */
export function Field({ label, hint, problem, children }: FieldProps) {
  const id = useId();
  const about = problem || hint ? `${id}-about` : undefined;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-describedby': about, 'aria-invalid': problem ? true : undefined })}
      {problem ? (
        <p className="problem" id={about} role="alert">
          {problem}
        </p>
      ) : hint ? (
        <p className="hint" id={about}>
          {hint}
        </p>
      ) : null}
    </div>
  );
}
