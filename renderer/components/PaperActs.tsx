import { Button } from '@mui/material';
import { lazy, Suspense } from 'react';
import { ChangeLines, type ChangeLinesProps } from './ChangeLines.tsx';
import { useWords } from './words.ts';

const PaperPreview = lazy(() => import('./PaperPreview.tsx').then((m) => ({ default: m.PaperPreview })));

/** A paper that can be made, and what became of it. */
export interface MadePaper<Input> {
  look(input: Input): void;
  save(input: Input): void;
  /** Null where the paper can only be saved. */
  readonly open: ((input: Input) => void) | null;
  /** The one looked at now. */
  readonly shown: {
    readonly file: { readonly name: string; readonly base64: string };
    readonly save: () => void;
    readonly open: (() => void) | null;
    readonly close: () => void;
  } | null;
  readonly outcome: string | null;
  readonly state: ChangeLinesProps & { readonly busy: boolean };
}

interface PaperActsProps<Input> {
  readonly save: string;
  readonly paper: MadePaper<Input>;
  readonly input: Input;
  /** True where there is nothing to print. */
  readonly nothing?: boolean;
  /** False where making the paper changes the workbook, so that it is not made for a look. */
  readonly preview?: boolean;
  /** Said while it is being made, where that takes a moment. */
  readonly making?: string;
}

/** Look at a paper, save it, or open it to print, and what became of it. */
export function PaperActs<Input>({
  save,
  paper,
  input,
  nothing = false,
  preview = true,
  making,
}: PaperActsProps<Input>) {
  const { print: words, preview: previewWords } = useWords();
  const { look, open, shown, outcome, state } = paper;
  const still = state.busy || nothing;
  return (
    <>
      <div className="acts">
        <Button variant="contained" disabled={still} onClick={() => paper.save(input)}>
          {save}
        </Button>
        {preview ? (
          <Button variant="outlined" disabled={still} onClick={() => look(input)}>
            {previewWords.look}
          </Button>
        ) : null}
        {open ? (
          <Button variant="outlined" disabled={still} onClick={() => open(input)}>
            {words.open}
          </Button>
        ) : null}
      </div>
      {state.busy && making ? <p role="status">{making}</p> : null}
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...state} ownFields={[]} />
      {shown ? (
        <Suspense fallback={null}>
          <PaperPreview paper={shown.file} onSave={shown.save} onOpen={shown.open} onClose={shown.close} />
        </Suspense>
      ) : null}
    </>
  );
}
