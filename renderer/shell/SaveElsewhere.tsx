import { Button } from '@mui/material';
import { useState } from 'react';
import { ask, shell } from '../client/client.ts';
import { useChange } from '../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../components/ChangeLines.tsx';
import { TextField } from '../components/TextField.tsx';
import { useWords } from '../components/words.ts';

/** Asks for a folder, saves all that is saved so far there, and goes on in the new file. */
export function SaveElsewhere({ onSaved }: { onSaved?: (file: string) => void }) {
  const words = useWords().copies.elsewhere;
  const [asking, setAsking] = useState(false);
  const [folder, setFolder] = useState('');
  const save = useChange(ask.workbook.saveElsewhere.mutate);
  const problem = useProblemOf(save.state.refusal);
  const choose = async () => {
    const picked = await shell.pickFolder(words.choose);
    if (picked.available && picked.path) setFolder(picked.path);
  };
  const submit = async () => {
    const state = await save.run({ folder });
    if (!state) return;
    setAsking(false);
    onSaved?.(state.open?.file ?? folder);
  };
  if (!asking) {
    return (
      <Button variant="outlined" size="small" onClick={() => setAsking(true)}>
        {words.offer}
      </Button>
    );
  }
  return (
    <form
      className="stack sheet"
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <p className="small">{words.line}</p>
      <TextField label={words.folder} value={folder} onChange={setFolder} problem={problem('folder')} autoFocus />
      <div className="acts">
        <Button type="submit" variant="contained" disabled={save.state.busy || folder.trim() === ''}>
          {words.save}
        </Button>
        {shell.kind === 'electron' ? <Button onClick={() => void choose()}>{words.choose}</Button> : null}
      </div>
      <ChangeLines {...save.state} ownFields={['folder']} />
    </form>
  );
}
