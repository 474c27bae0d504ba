import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useProblemOf } from '../../components/ChangeLines.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { MakeActs } from './MakeActs.tsx';
import { useMaking } from './use-making.ts';

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
  const making = useMaking(ask.workbook.packWorkbook.mutate, ({ file, copies }) => words.made(file, copies));
  const problem = useProblemOf(making.state.refusal);
  const make = () => making.run({ folder: folder.trim() === '' || folder === usualFolder ? null : folder });
  return (
    <div className="stack">
      <p className="soft">{words.explain}</p>
      <TextField label={words.folder} value={folder} onChange={setFolder} problem={problem('folder')} />
      <MakeActs label={words.make} making={making} onMake={() => void make()} ownFields={['folder']} />
    </div>
  );
}
