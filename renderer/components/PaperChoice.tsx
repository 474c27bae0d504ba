import { ChoiceField } from './ChoiceField.tsx';
import { useWords } from './words.ts';

export interface PaperWish {
  readonly paper: 'a4' | 'letter';
  readonly large: boolean;
}

export const FIRST_PAPER: PaperWish = { paper: 'a4', large: false };

/** Which paper, and whether in large print. */
export function PaperChoice({ wish, onChange }: { wish: PaperWish; onChange: (wish: PaperWish) => void }) {
  const { yardSheet: words } = useWords();
  return (
    <>
      <ChoiceField
        label={words.paper}
        value={wish.paper}
        choices={(['a4', 'letter'] as const).map((value) => ({ value, text: words.papers[value] }))}
        onChange={(paper) => onChange({ ...wish, paper })}
      />
      <label className="check" style={{ minHeight: 40 }}>
        <input
          type="checkbox"
          checked={wish.large}
          onChange={(event) => onChange({ ...wish, large: event.target.checked })}
        />
        {words.large}
      </label>
    </>
  );
}
