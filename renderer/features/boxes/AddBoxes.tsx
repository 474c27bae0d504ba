import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import { BOX_TYPES, type BoxType } from '../../../shared/model/method.ts';
import { ask } from '../../client/client.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';

/** One box or a whole span of them. */
export function AddBoxes() {
  const words = useWords();
  const labels = words.boxes;
  const [codes, setCodes] = useState('');
  const [row, setRow] = useState('');
  const [yardId, setYardId] = useState('');
  const [boxType, setBoxType] = useState<BoxType>('mini');
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const add = useChange(ask.boxes.addBoxes.mutate);
  const problem = useProblemOf(add.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const count = Math.max(1, readBoxCodes(codes)?.length ?? 1);
    const ids = Array.from({ length: count }, newId);
    if (await add.run({ ids, codes, row: row.trim() || null, yardId: yardId || null, boxType })) setCodes('');
  };
  const yards = (hives.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <Section title={labels.add}>
      <form className="stack" onSubmit={(event) => void submit(event)}>
        <div className="row">
          <TextField
            label={labels.codes}
            value={codes}
            onChange={setCodes}
            hint={labels.codesHint}
            problem={problem('codes')}
            required
          />
          <ChoiceField
            label={labels.yard}
            value={yardId}
            choices={[{ value: '', text: labels.noYard }, ...yards]}
            onChange={setYardId}
            problem={problem('yardId')}
          />
          <TextField label={labels.row} value={row} onChange={setRow} />
          <ChoiceField
            label={labels.type}
            value={boxType}
            choices={BOX_TYPES.map((type) => ({ value: type, text: words.boxTypes[type].name }))}
            onChange={setBoxType}
          />
        </div>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={add.state.busy || codes.trim() === ''}>
            {labels.add}
          </Button>
        </div>
        <ChangeLines {...add.state} ownFields={['codes', 'yardId']} />
      </form>
    </Section>
  );
}
