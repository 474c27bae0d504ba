import { Button } from '@mui/material';
import { ChangeLines, type ChangeLinesProps } from './ChangeLines.tsx';
import { useWords } from './words.ts';

export interface PaperActsProps {
  readonly save: string;
  readonly onSave: () => void;
  /** Null where the paper can only be saved. */
  readonly onOpen: (() => void) | null;
  readonly busy: boolean;
  /** Said while it is being made, where that takes a moment. */
  readonly making?: string;
  readonly outcome: string | null;
  readonly state: ChangeLinesProps;
}

/** Save a paper, or open it to print, and what became of it. */
export function PaperActs({ save, onSave, onOpen, busy, making, outcome, state }: PaperActsProps) {
  const { print: words } = useWords();
  return (
    <>
      <div className="acts">
        <Button variant="contained" disabled={busy} onClick={onSave}>
          {save}
        </Button>
        {onOpen ? (
          <Button variant="outlined" disabled={busy} onClick={onOpen}>
            {words.open}
          </Button>
        ) : null}
      </div>
      {busy && making ? <p role="status">{making}</p> : null}
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...state} ownFields={[]} />
    </>
  );
}
