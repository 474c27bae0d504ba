import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
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
                look.strength ? words.one.strengthSeen(look.strength) : null,
                look.food ? words.one.foodSeen(look.food) : null,
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

const NOTHING_TYPED = { note: '', strength: '', food: '' };

function LookForm({ colonyId }: { colonyId: string }) {
  const { hives: words } = useWords();
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const { value: typed, set, found, forget } = useDraft(`look:${colonyId}`, NOTHING_TYPED);
  const record = useChange(ask.hives.recordHiveLook.mutate);
  const problem = useProblemOf(record.state.refusal);
  const five = (text: string) => (text.trim() === '' ? null : Number(text));
  const type = (field: keyof typeof NOTHING_TYPED) => (text: string) => set((before) => ({ ...before, [field]: text }));
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const saved = await record.run({
      id: newId(),
      colonyId,
      lookedOn: day,
      note: typed.note,
      strength: five(typed.strength),
      food: five(typed.food),
    });
    if (saved) forget();
  };
  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      <DayField label={words.one.lookDay} value={day} onChange={setDay} problem={problem('lookedOn')} />
      <TextField
        label={words.one.lookNote}
        value={typed.note}
        onChange={type('note')}
        problem={problem('note')}
        multiline
      />
      <div className="row">
        <TextField
          label={words.one.strength}
          value={typed.strength}
          onChange={type('strength')}
          numeric
          problem={problem('strength')}
        />
        <TextField
          label={words.one.food}
          value={typed.food}
          onChange={type('food')}
          numeric
          problem={problem('food')}
        />
      </div>
      <div className="acts">
        <Button
          type="submit"
          variant="outlined"
          disabled={record.state.busy || day === null || typed.note.trim() === ''}
        >
          {words.one.addLook}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={['lookedOn', 'note', 'strength', 'food']} />
    </form>
  );
}
