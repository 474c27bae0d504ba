import { Button } from '@mui/material';
import { useState } from 'react';
import type { CopyList } from '../../../shared/contract/copies.ts';
import { ask, shell } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { useMoment } from '../../components/moments.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';
import { tooOld } from './second-place-age.ts';

/** A folder on another drive to which the newest copy goes as well. */
export function SecondPlace({ second }: { second: CopyList['secondPlace'] }) {
  const words = useWords().copies.second;
  const moment = useMoment();
  const [folder, setFolder] = useState(second?.folder ?? '');
  const set = useChange(ask.copies.setSecondPlace.mutate);
  const problem = useProblemOf(set.state.refusal);
  const choose = async () => {
    const picked = await shell.pickFolder(words.choose);
    if (picked.available && picked.path) setFolder(picked.path);
  };
  const age = tooOld(second?.newestAt ?? null, useToday());
  const says = () => {
    if (!second) return words.none;
    if (!second.reachable) return words.missing;
    if (!second.newestAt) return words.empty;
    return age === null ? words.newest(moment(second.newestAt)) : words.old(moment(second.newestAt), age);
  };
  return (
    <Section title={words.title} level={3}>
      <form
        className="stack"
        style={{ maxWidth: '72ch' }}
        onSubmit={(event) => {
          event.preventDefault();
          void set.run({ folder });
        }}
      >
        <p>{words.line}</p>
        <p className={second?.reachable === false || age !== null ? 'line-notice' : 'soft'}>{says()}</p>
        <TextField label={words.folder} value={folder} onChange={setFolder} problem={problem('folder')} />
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={set.state.busy || folder.trim() === ''}>
            {words.set}
          </Button>
          {shell.kind === 'electron' ? <Button onClick={() => void choose()}>{words.choose}</Button> : null}
          {second ? <Button onClick={() => void set.run({ folder: null })}>{words.unset}</Button> : null}
        </div>
        <ChangeLines {...set.state} ownFields={['folder']} />
      </form>
    </Section>
  );
}
