import { Field } from './Field.tsx';

interface FileFieldProps {
  readonly label: string;
  /** What the file dialog offers first: ".csv,.xlsx". */
  readonly accept: string;
  readonly onChange: (file: File) => void;
  readonly problem?: string | null;
}

/** A file chosen through the system's own dialog, or dropped on the field. */
export function FileField({ label, accept, onChange, problem }: FileFieldProps) {
  return (
    <Field label={label} problem={problem ?? null}>
      {(control) => (
        <input
          {...control}
          className="control"
          type="file"
          accept={accept}
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file) onChange(file);
          }}
        />
      )}
    </Field>
  );
}
