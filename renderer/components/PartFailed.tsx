import { Button } from '@mui/material';
import { useFirstWords } from './words.ts';

interface PartFailedProps {
  readonly onAgain: () => void;
  readonly onLeave: () => void;
}

/** In place of a dialog that could not be loaded: the program's files were replaced while it ran, or cannot be read. */
export function PartFailed({ onAgain, onLeave }: PartFailedProps) {
  const { frame } = useFirstWords();
  return (
    <div className="line-problem" role="alert">
      <p>{frame.partFailed}</p>
      <div className="acts">
        <Button variant="outlined" onClick={onAgain}>
          {frame.tryAgain}
        </Button>
        <Button onClick={() => window.location.reload()}>{frame.loadAnew}</Button>
        <Button onClick={onLeave}>{frame.cancel}</Button>
      </div>
    </div>
  );
}
