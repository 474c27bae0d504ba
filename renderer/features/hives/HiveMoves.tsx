import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveRecords } from '../../../shared/contract/stock.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** Where the hive stood, and which queens headed it. */
export function HiveMoves({ colonyId, records }: { colonyId: string; records: HiveRecords }) {
  const { stock, hives } = useWords();
  const words = stock.moves;
  const days = useDays();
  return (
    <Section title={words.title}>
      {records.queens.length === 0 ? <p className="soft">{words.noQueens}</p> : null}
      <dl className="facts">
        {records.queens.map((one) => (
          <div key={`${one.id} ${one.from}`} style={{ display: 'contents' }}>
            <dt className="nowrap">
              <a href={`#/queens/${one.id}`}>{one.number}</a>
            </dt>
            <dd>{words.queen(days.dated(one.from), one.until === null ? null : days.dated(one.until))}</dd>
          </div>
        ))}
      </dl>
      {records.moves.length === 0 ? <p className="soft">{words.none}</p> : null}
      <dl className="facts" style={{ marginBottom: 10 }}>
        {records.moves.map((one) => (
          <div key={one.id} style={{ display: 'contents' }}>
            <dt className="nowrap">{days.dated(one.movedOn)}</dt>
            <dd>
              {[words.moved(one.from ?? hives.noYard, one.to ?? hives.noYard), one.place, one.paper, one.note]
                .filter(Boolean)
                .join(' · ')}
            </dd>
          </div>
        ))}
      </dl>
      <details>
        <summary>{words.add}</summary>
        <p className="line-notice" style={{ marginBottom: 10 }}>
          {words.caution}
        </p>
        <MoveForm colonyId={colonyId} />
      </details>
    </Section>
  );
}

function MoveForm({ colonyId }: { colonyId: string }) {
  const { stock, hives: hiveWords } = useWords();
  const words = stock.moves;
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const [yardId, setYardId] = useState('');
  const [place, setPlace] = useState('');
  const [paper, setPaper] = useState('');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`hive-move-note:${colonyId}`, '');
  const list = useAnswer(['hives'], () => ask.hives.listHives.query());
  const move = useChange(ask.hives.moveHive.mutate);
  const problem = useProblemOf(move.state.refusal);
  const textOrNull = (text: string) => text.trim() || null;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const to = { toYardId: textOrNull(yardId), place: textOrNull(place), paper: textOrNull(paper) };
    if (!(await move.run({ id: newId(), colonyId, movedOn: day, note: textOrNull(note), ...to }))) return;
    for (const clear of [setPlace, setPaper]) clear('');
    forgetNote();
  };
  const yards = (list.data?.yards ?? []).map((yard) => ({ value: yard.id, text: yard.name }));
  return (
    <form className="stack prints" onSubmit={(event) => void submit(event)}>
      <div className="row">
        <DayField label={words.day} value={day} onChange={setDay} problem={problem('movedOn')} />
        <ChoiceField
          label={words.yard}
          value={yardId}
          choices={[{ value: '', text: hiveWords.noYard }, ...yards]}
          onChange={setYardId}
          problem={problem('yardId')}
        />
        <TextField label={words.place} value={place} onChange={setPlace} problem={problem('place')} />
      </div>
      <div className="row">
        <TextField label={words.paper} value={paper} onChange={setPaper} problem={problem('paper')} />
        <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={move.state.busy || day === null}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...move.state} ownFields={['movedOn', 'yardId', 'place', 'paper', 'note']} />
    </form>
  );
}
