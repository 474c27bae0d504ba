import { Button } from '@mui/material';
import { useEffect, useRef } from 'react';
import type { ChangeState } from '../client/hooks.ts';
import { ChangeLines } from '../components/ChangeLines.tsx';
import { useChangeSentence, useFirstWords } from '../components/words.ts';
import type { Turned, Way } from './use-undo.ts';

/** Long enough to read a sentence and reach for the button; the history page keeps it for good. */
const SHOWN_FOR_MS = 15_000;

const SAID = { undo: 'undone', redo: 'doneAgain', 'taken-out': 'happened' } as const;

interface UndoLineProps {
  readonly turned: Turned | null;
  readonly state: ChangeState;
  readonly onTurn: (way: Way) => void;
  readonly onClose: () => void;
}

/** At the foot of the window: what was taken back, done again or taken out, and the other way. */
export function UndoLine({ turned, state, onTurn, onClose }: UndoLineProps) {
  const say = useChangeSentence();
  const { history, frame } = useFirstWords();
  const line = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!turned) return;
    const timer = setInterval(() => {
      if (!line.current?.matches(':focus-within, :hover')) onClose();
    }, SHOWN_FOR_MS);
    return () => clearInterval(timer);
  }, [turned, onClose]);
  const other = turned?.way === 'undo' ? 'redo' : 'undo';
  const said = turned?.step ? say(turned.step.words) : null;
  return (
    <div className={turned ? 'undo-line' : undefined} ref={line} role="status">
      {turned ? (
        <>
          {said === null ? (
            <ChangeLines refusal={state.refusal} notReached={state.notReached} />
          ) : (
            <span>{history[SAID[turned.way]](said)}</span>
          )}
          <span className="acts">
            {said === null ? null : (
              <Button size="small" variant="outlined" onClick={() => onTurn(other)}>
                {history[other]}
              </Button>
            )}
            <Button size="small" onClick={onClose}>
              {frame.close}
            </Button>
          </span>
        </>
      ) : null}
    </div>
  );
}
