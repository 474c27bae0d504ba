import { Button } from '@mui/material';
import type { FormEvent } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { BOX_TYPES, type BoxType } from '../../../shared/model/method.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { useFollowing } from '../../components/following.ts';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

const textOrNull = (text: string): string | null => text.trim() || null;

/** What a box is called, where it stands, and its note. */
export function BoxParticulars({ box }: { box: BoxLine }) {
  const words = useWords();
  const labels = words.boxes;
  const [code, setCode] = useFollowing(box.code);
  const [yardId, setYardId] = useFollowing(box.yardId ?? '');
  const [row, setRow] = useFollowing(box.row ?? '');
  const [walk, setWalk] = useFollowing(String(box.walkOrder));
  const [boxType, setBoxType] = useFollowing<BoxType>(box.boxType);
  const { value: note, set: setNote, found } = useDraft(`box-note:${box.id}`, box.note ?? '');
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const save = useChange(ask.boxes.saveBox.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { id, retiredOn } = box;
    const walkOrder = /^\d+$/.test(walk.trim()) ? Number(walk) : Number.NaN;
    const place = { yardId: textOrNull(yardId), row: textOrNull(row), walkOrder };
    setNote(note.trim());
    void save.run({ id, code, ...place, boxType, note: textOrNull(note), retiredOn });
  };
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <form className="stack prints" onSubmit={submit}>
      <div className="row">
        <TextField label={labels.columns.box} value={code} onChange={setCode} problem={problem('codes', 'code')} />
        <ChoiceField
          label={labels.yard}
          value={yardId}
          choices={[{ value: '', text: labels.noYard }, ...yards]}
          onChange={setYardId}
          problem={problem('yardId')}
        />
        <TextField label={labels.row} value={row} onChange={setRow} problem={problem('row')} />
        <TextField label={labels.walk} value={walk} onChange={setWalk} numeric problem={problem('walkOrder')} />
        <ChoiceField
          label={labels.type}
          value={boxType}
          choices={BOX_TYPES.map((type) => ({ value: type, text: words.boxTypes[type].name }))}
          onChange={setBoxType}
        />
      </div>
      <TextField label={labels.note} value={note} onChange={setNote} problem={problem('note')} multiline />
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={save.state.busy || code.trim() === ''}>
          {words.frame.save}
        </Button>
        {save.state.done ? (
          <span className="line-good" role="status">
            {words.hives.one.saved}
          </span>
        ) : null}
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...save.state} ownFields={['codes', 'code', 'yardId', 'row', 'walkOrder', 'note']} />
    </form>
  );
}
