import { Button } from '@mui/material';
import { useChangeSentence, useFirstWords } from '../components/words.ts';
import { useUndoState } from './use-undo.ts';

/** What Ctrl+Z would take back, in words; nothing where there is nothing. */
export function UndoButton({ onUndo }: { onUndo: () => void }) {
  const { history } = useFirstWords();
  const say = useChangeSentence();
  const state = useUndoState();
  if (!state.data?.undo) return null;
  const words = history.undoThat(say(state.data.undo.words));
  return (
    <Button variant="text" size="small" className="undo-button" title={words} onClick={onUndo}>
      <span>{words}</span>
    </Button>
  );
}
