import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { NumberField } from './NumberField.tsx';

const MOST_QUEENS = 500;

export function WishForm() {
  const { planPage: words } = useWords().season;
  const [forWhom, setForWhom] = useState('');
  const [queens, setQueens] = useState<number | null>(null);
  const [wantedOn, setWantedBy] = useState<IsoDay | null>(null);
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft('wish-note', '');
  const [added, setAdded] = useState(0);
  const save = useChange(ask.season.saveWish.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (queens === null || wantedOn === null) return;
    const wish = { id: newId(), forWhom: forWhom.trim() || null, queens, wantedOn, settledOn: null };
    if (!(await save.run({ ...wish, note: note.trim() || null }))) return;
    setForWhom('');
    setQueens(null);
    forgetNote();
    setAdded(added + 1);
  };
  return (
    <form className="stack" style={{ marginTop: 18 }} onSubmit={(event) => void submit(event)}>
      <div className="row" key={added}>
        <NumberField label={words.queens} value={queens} most={MOST_QUEENS} onChange={setQueens} />
        <DayField label={words.by} value={wantedOn} onChange={setWantedBy} problem={problem('wantedOn')} />
        <TextField
          label={words.who}
          value={forWhom}
          onChange={setForWhom}
          hint={words.whoHint}
          problem={problem('forWhom')}
        />
        <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={queens === null || wantedOn === null || save.state.busy}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...save.state} ownFields={['forWhom', 'wantedOn', 'note']} />
    </form>
  );
}
