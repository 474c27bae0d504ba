import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import { ask } from '../../client/client.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** What was seen in the hive, newest first, and the form for today's look. */
export function HiveLooks({ hive }: { hive: HiveDetail }) {
  const { hives: words } = useWords();
  const days = useDays();
  const remove = useTakeOut(ask.hives.removeHiveLook.mutate);
  return (
    <Section title={words.one.looks}>
      {hive.looks.length === 0 ? <p className="soft">{words.one.noLooks}</p> : null}
      <dl className="facts" style={{ marginBottom: 16 }}>
        {hive.looks.map((look) => (
          <div key={look.id} style={{ display: 'contents' }}>
            <dt className="nowrap">{days.short(look.lookedOn)}</dt>
            <dd>
              {[
                look.note,
                look.strength ? `${words.one.strength}: ${look.strength}` : null,
                look.food ? `${words.one.food}: ${look.food}` : null,
              ]
                .filter(Boolean)
                .join(' · ')}{' '}
              <button
                type="button"
                className="as-text small no-print"
                disabled={remove.state.busy}
                aria-label={words.one.removeLookOf(days.short(look.lookedOn))}
                onClick={() => void remove.run({ lookId: look.id })}
              >
                {words.one.removeLook}
              </button>
            </dd>
          </div>
        ))}
      </dl>
      <ChangeLines {...remove.state} />
      <LookForm colonyId={hive.id} />
    </Section>
  );
}

function LookForm({ colonyId }: { colonyId: string }) {
  const { hives: words } = useWords();
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const [note, setNote] = useState('');
  const [strength, setStrength] = useState('');
  const [food, setFood] = useState('');
  const record = useChange(ask.hives.recordHiveLook.mutate);
  const problem = useProblemOf(record.state.refusal);
  const five = (text: string) => (text.trim() === '' ? null : Number(text));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const saved = await record.run({
      id: newId(),
      colonyId,
      lookedOn: day,
      note,
      strength: five(strength),
      food: five(food),
    });
    if (!saved) return;
    for (const clear of [setNote, setStrength, setFood]) clear('');
  };
  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      <DayField label={words.one.lookDay} value={day} onChange={setDay} problem={problem('lookedOn')} />
      <TextField label={words.one.lookNote} value={note} onChange={setNote} problem={problem('note')} multiline />
      <div className="row">
        <TextField
          label={words.one.strength}
          value={strength}
          onChange={setStrength}
          numeric
          problem={problem('strength')}
        />
        <TextField label={words.one.food} value={food} onChange={setFood} numeric problem={problem('food')} />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null || note.trim() === ''}>
          {words.one.addLook}
        </Button>
      </div>
      <ChangeLines {...record.state} ownFields={['lookedOn', 'note', 'strength', 'food']} />
    </form>
  );
}
