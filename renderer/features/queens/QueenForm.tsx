import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { QueenLine } from '../../../shared/contract/queens.ts';
import { QUEEN_PLACES, type Queen } from '../../../shared/model/queen.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';

const OWN_FIELDS = ['motherId', 'number', 'bornIn', 'provedOn', 'firstEggsOn', 'motherLine', 'goneTo', 'note'];

/** One queen's particulars; a new one gets the next number of the year. */
export function QueenForm({
  queen,
  lines,
  onClose,
}: {
  queen: Queen | null;
  lines: readonly QueenLine[];
  onClose: () => void;
}) {
  const { queens: words, frame } = useWords();
  const year = Number(useToday().slice(0, 4));
  const [fresh] = useState(() => freshQueen(year, lines));
  const [form, setForm] = useFollowing<Queen>(queen ?? fresh);
  const note = useDraft(`queen-note:${queen?.id ?? 'new'}`, form.note ?? '');
  const change = (changes: Partial<Queen>) => setForm((before) => ({ ...before, ...changes }));
  const save = useChange(ask.queens.saveQueen.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!(await save.run({ ...form, note: text(note.value) }))) return;
    note.forget();
    onClose();
  };
  return (
    <Section
      title={queen ? `${words.edit} ${queen.number}` : words.add}
      acts={<Button onClick={onClose}>{frame.close}</Button>}
    >
      <form className="stack prints" onSubmit={(event) => void submit(event)}>
        <QueenFields form={form} change={change} problem={problem} lines={lines} isNew={queen === null} />
        <TextField label={words.note} value={note.value} onChange={note.set} problem={problem('note')} multiline />
        <div className="acts">
          <Button type="submit" variant="contained" disabled={save.state.busy || form.number.trim() === ''}>
            {words.save}
          </Button>
        </div>
        <FoundDraft found={note.found} />
        <ChangeLines {...save.state} ownFields={OWN_FIELDS} />
      </form>
    </Section>
  );
}

interface QueenFieldsProps {
  readonly lines: readonly QueenLine[];
  readonly isNew: boolean;
  readonly form: Queen;
  readonly change: (changes: Partial<Queen>) => void;
  readonly problem: (...fields: readonly string[]) => string | null;
}

const text = (value: string): string | null => (value.trim() === '' ? null : value);

function QueenFields({ form, change, problem, lines, isNew }: QueenFieldsProps) {
  const { queens: words } = useWords();
  return (
    <>
      <div className="row">
        <TextField
          label={words.number}
          value={form.number}
          onChange={(number) => change({ number })}
          hint={words.numberHint}
          problem={problem('number')}
          required
        />
        <TextField
          label={words.bornIn}
          value={String(form.bornIn)}
          onChange={(born) => change({ bornIn: Number(born.replace(/\D/g, '').slice(0, 4)) })}
          numeric
          problem={problem('bornIn')}
        />
        <TextField
          label={words.line}
          value={form.motherLine ?? ''}
          onChange={(line) => change({ motherLine: text(line) })}
          problem={problem('motherLine')}
        />
      </div>
      <div className="row">
        <DayField label={words.marked} value={form.markedOn} onChange={(markedOn) => change({ markedOn })} />
        <DayField
          label={words.firstEggs}
          value={form.firstEggsOn}
          onChange={(firstEggsOn) => change({ firstEggsOn })}
          problem={problem('firstEggsOn')}
        />
        <DayField
          label={words.proved}
          value={form.provedOn}
          onChange={(provedOn) => change({ provedOn })}
          problem={problem('provedOn')}
        />
      </div>
      {isNew ? <NewPlace form={form} change={change} problem={problem} /> : null}
      <MotherField form={form} change={change} problem={problem} lines={lines} />
    </>
  );
}

type PartProps = Omit<QueenFieldsProps, 'lines' | 'isNew'>;

/** Where a new queen is. Later moves of hers are written on her page, each with its day. */
function NewPlace({ form, change, problem }: PartProps) {
  const { queens: words } = useWords();
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const choices = (hives.data?.hives ?? []).map((hive) => ({
    value: hive.id,
    text: [hive.code, hive.name].filter(Boolean).join(' '),
  }));
  return (
    <div className="row">
      <ChoiceField
        label={words.place}
        value={form.place}
        choices={QUEEN_PLACES.filter((value) => value !== 'in-box').map((value) => ({
          value,
          text: words.places[value],
        }))}
        onChange={(place) => change({ place })}
      />
      {form.place === 'in-hive' ? (
        <ChoiceField
          label={words.hive}
          value={form.colonyId ?? ''}
          choices={[{ value: '', text: words.noHive }, ...choices]}
          onChange={(colonyId) => change({ colonyId: text(colonyId) })}
        />
      ) : (
        <TextField
          label={words.goneTo}
          value={form.goneTo ?? ''}
          onChange={(goneTo) => change({ goneTo: text(goneTo) })}
          problem={problem('goneTo')}
        />
      )}
    </div>
  );
}

/** Her mother, where the batch does not say it or says it wrongly. */
function MotherField({ form, change, problem, lines }: PartProps & { lines: readonly QueenLine[] }) {
  const { queens: words } = useWords();
  const others = lines.filter(({ queen }) => queen.id !== form.id);
  return (
    <ChoiceField
      label={words.mother}
      value={form.motherId ?? ''}
      choices={[
        { value: '', text: words.motherReckoned },
        ...others.map(({ queen }) => ({ value: queen.id, text: queen.number })),
      ]}
      onChange={(motherId) => change({ motherId: text(motherId) })}
      problem={problem('motherId')}
    />
  );
}

function freshQueen(bornIn: number, lines: readonly QueenLine[]): Queen {
  const year = String(bornIn % 100).padStart(2, '0');
  const numbers = lines.map(({ queen }) => Number(new RegExp(`^${year}-(\\d+)$`).exec(queen.number)?.[1] ?? 0));
  const number = `${year}-${String(Math.max(0, ...numbers) + 1).padStart(3, '0')}`;
  const unknown = {
    placementId: null,
    batchId: null,
    breederId: null,
    motherId: null,
    motherLine: null,
    markedOn: null,
    firstEggsOn: null,
    provedOn: null,
    boxId: null,
    colonyId: null,
    goneTo: null,
    note: null,
  };
  return { id: newId(), number, bornIn, place: 'in-hive', ...unknown };
}
