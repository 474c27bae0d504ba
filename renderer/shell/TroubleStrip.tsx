import { Button } from '@mui/material';
import type { SaveTrouble } from '../client/save-trouble.ts';
import { ChangeLines } from '../components/ChangeLines.tsx';
import { useWords } from '../components/words.ts';
import { SaveElsewhere } from './SaveElsewhere.tsx';

interface TroubleStripProps {
  readonly trouble: SaveTrouble | null;
  /** The file in which all was saved elsewhere; null before. */
  readonly savedAs: string | null;
  readonly onSaved: (file: string | null) => void;
}

export function TroubleStrip({ trouble, savedAs, onSaved }: TroubleStripProps) {
  const { copies: words } = useWords();
  if (savedAs !== null) {
    return (
      <aside className="strip" aria-label={words.trouble}>
        <span role="status">{words.elsewhere.saved(savedAs)}</span>
        <Button variant="outlined" size="small" onClick={() => onSaved(null)}>
          {words.elsewhere.understood}
        </Button>
      </aside>
    );
  }
  if (trouble === null) return null;
  return (
    <aside className="alarm" aria-label={words.trouble}>
      <ChangeLines refusal={{ kind: 'not-saved', reason: trouble }} />
      <SaveElsewhere onSaved={onSaved} />
    </aside>
  );
}
