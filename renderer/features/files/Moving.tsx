import { Button } from '@mui/material';
import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

/** Everything in one file, for another computer. */
export function Moving() {
  const { moving: words, practice } = useWords();
  const state = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  if (!state.data?.open) return null;
  return (
    <Section title={words.title}>
      {state.data.open.kind === 'demo' ? <p>{words.noDemo}</p> : null}
      {state.data.open.kind === 'practice' ? <p>{practice.stays}</p> : null}
      {state.data.open.kind === 'real' ? (
        <Pack key={state.data.usualFolder} usualFolder={state.data.usualFolder} />
      ) : null}
    </Section>
  );
}

function Pack({ usualFolder }: { usualFolder: string }) {
  const { moving: words } = useWords();
  const [folder, setFolder] = useState(usualFolder);
  const [outcome, setOutcome] = useState<string | null>(null);
  const pack = useChange(ask.workbook.packWorkbook.mutate);
  const problem = useProblemOf(pack.state.refusal);
  const make = async () => {
    setOutcome(null);
    const packed = await pack.run({ folder: folder.trim() === '' || folder === usualFolder ? null : folder });
    if (packed) setOutcome(words.made(packed.file, packed.copies));
  };
  return (
    <div className="stack">
      <p className="soft">{words.explain}</p>
      <TextField label={words.folder} value={folder} onChange={setFolder} problem={problem('folder')} />
      <div className="acts">
        <Button variant="contained" disabled={pack.state.busy} onClick={() => void make()}>
          {words.make}
        </Button>
      </div>
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...pack.state} ownFields={['folder']} />
    </div>
  );
}
