import { Button } from '@mui/material';
import { useState } from 'react';
import type { SafetyCopy } from '../../../shared/contract/copies.ts';
import type { WorkbookRef } from '../../../shared/contract/workbook.ts';
import { ask } from '../../client/client.ts';
import { useOtherWorkbook } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { useMoment } from '../../components/moments.ts';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { folderOf } from './folder-of.ts';

interface GoBackProps {
  readonly copy: SafetyCopy;
  readonly of: WorkbookRef | null;
  /** The workbook is missing or damaged: its folder may be gone as well. */
  readonly askFolder: boolean;
  readonly onLeave: () => void;
}

/** Says what going back does, and does it on a second word only. */
export function GoBack({ copy, of, askFolder, onLeave }: GoBackProps) {
  const { copies: words } = useWords();
  const moment = useMoment();
  const usual = folderOf(of?.file ?? '');
  const [folder, setFolder] = useState(usual);
  const back = useOtherWorkbook(ask.copies.restoreCopy.mutate);
  const problem = useProblemOf(back.state.refusal);
  const [keptAs, setKeptAs] = useState<string | null | undefined>();
  const restore = async () => {
    const restored = await back.run({ copy: copy.id, folder: folder.trim() === usual ? null : folder });
    if (restored) setKeptAs(restored.keptAs);
  };
  if (keptAs !== undefined) {
    return (
      <p className="line-good" role="status" style={{ overflowWrap: 'anywhere' }}>
        {keptAs === null ? words.back : words.backAt(keptAs)}
      </p>
    );
  }
  return (
    <fieldset className="stack" style={{ margin: '14px 0', maxWidth: '72ch' }}>
      <legend>{words.goBackTo(moment(copy.at))}</legend>
      <p>{askFolder ? words.sureMissing(moment(copy.at)) : words.sure(moment(copy.at))}</p>
      {askFolder ? (
        <TextField label={words.folder} value={folder} onChange={setFolder} problem={problem('folder')} />
      ) : null}
      <div className="acts">
        <Button variant="contained" disabled={back.state.busy} onClick={() => void restore()}>
          {words.yes}
        </Button>
        <Button onClick={onLeave}>{words.no}</Button>
      </div>
      <ChangeLines {...back.state} ownFields={askFolder ? ['folder'] : []} />
    </fieldset>
  );
}
