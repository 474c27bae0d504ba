import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { PromiseLine, QueenDetail } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';

interface PromiseFormProps {
  readonly line: QueenDetail;
  /** The promise that is changed; null = a new one. */
  readonly promise: PromiseLine | null;
  readonly onDone: () => void;
}

/** To whom she is promised, by when if a day was said, and a note. */
export function PromiseForm({ line, promise, onDone }: PromiseFormProps) {
  const words = useWords().queens.promise;
  const today = useToday();
  const [id] = useState(() => promise?.id ?? newId());
  const [name, setName] = useState(promise?.promisedTo ?? '');
  const [wantedOn, setWantedOn] = useState<string | null>(promise?.wantedOn ?? null);
  const draft = useDraft(`promise-note:${line.queen.id}`, promise?.note ?? '');
  const save = useChange(ask.queens.promiseQueen.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const said = { promisedTo: name, wantedOn, note: draft.value.trim() || null };
    const promisedOn = promise?.promisedOn ?? today;
    if (!(await save.run({ id, queenId: line.queen.id, promisedOn, ...said }))) return;
    draft.forget();
    onDone();
  };
  const names = [...new Set([...line.wishers, ...line.receivers])];
  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      <div className="row">
        <TextField
          label={words.name}
          value={name}
          onChange={setName}
          hint={line.wishers.length > 0 ? words.wishersHint(line.wishers.join(', ')) : undefined}
          problem={problem('promisedTo')}
          list="promised-names"
          autoFocus
          required
        />
        <datalist id="promised-names">
          {names.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
        <DayField label={words.wantedOn} value={wantedOn} onChange={setWantedOn} problem={problem('wantedOn')} />
      </div>
      <TextField label={words.note} value={draft.value} onChange={draft.set} problem={problem('note')} />
      <div className="acts">
        <Button type="submit" variant="contained" disabled={save.state.busy || name.trim() === ''}>
          {words.save}
        </Button>
      </div>
      <FoundDraft found={draft.found} />
      <ChangeLines {...save.state} ownFields={['promisedTo', 'wantedOn', 'note']} />
    </form>
  );
}
