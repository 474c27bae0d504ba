import { Button } from '@mui/material';
import { useState } from 'react';
import { TextField } from './TextField.tsx';
import { useFirstWords } from './words.ts';

interface DropFormProps {
  readonly busy: boolean;
  readonly onDrop: (reason: string) => void;
  /** Where the form was opened for this alone: typing begins in it, and it can be left. */
  readonly onBack?: () => void;
}

/** A job will not be done, and why. */
export function DropForm({ busy, onDrop, onBack }: DropFormProps) {
  const { today: words } = useFirstWords();
  const [reason, setReason] = useState('');
  return (
    <form
      className="stack"
      style={{ flex: '1 1 220px' }}
      onSubmit={(event) => {
        event.preventDefault();
        onDrop(reason);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onBack?.();
      }}
    >
      <TextField
        label={words.dropReason}
        value={reason}
        onChange={setReason}
        hint={words.dropTold}
        autoFocus={onBack !== undefined}
      />
      <div className="acts">
        <Button type="submit" size="small" variant="outlined" disabled={busy}>
          {words.dropSave}
        </Button>
        {onBack ? (
          <Button size="small" onClick={onBack}>
            {words.dropBack}
          </Button>
        ) : null}
      </div>
    </form>
  );
}
