import { useFirstWords } from '../components/words.ts';

/** What was typed before Go to was here. */
export interface Ahead {
  readonly letters: string;
  /** Enter came after them. */
  readonly entered: boolean;
}

interface TypedAheadProps {
  readonly typed: Ahead;
  readonly onType: (typed: Ahead) => void;
  readonly onClose: () => void;
}

/** Takes the keys pressed after Ctrl+K while Go to is still being fetched, so that none of them is lost. */
export function TypedAhead({ typed, onType, onClose }: TypedAheadProps) {
  const { frame } = useFirstWords();
  return (
    <input
      // biome-ignore lint/a11y/noAutofocus: it stands in for the dialog that the key has called
      autoFocus
      className="visually-hidden"
      aria-label={frame.goToHint}
      value={typed.letters}
      onChange={(event) => onType({ letters: event.target.value, entered: false })}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
        if (event.key === 'Enter') onType({ ...typed, entered: true });
      }}
    />
  );
}
