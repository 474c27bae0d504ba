import { useFirstWords } from '../components/words.ts';

interface TypedAheadProps {
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly onClose: () => void;
}

/** Takes the letters typed after Ctrl+K while Go to is still being fetched, so that none of them is lost. */
export function TypedAhead({ typed, onType, onClose }: TypedAheadProps) {
  const { frame } = useFirstWords();
  return (
    <input
      // biome-ignore lint/a11y/noAutofocus: it stands in for the dialog that the key has called
      autoFocus
      className="visually-hidden"
      aria-label={frame.goToHint}
      value={typed}
      onChange={(event) => onType(event.target.value)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    />
  );
}
