import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { QueenDetail } from '../../../shared/contract/queens.ts';
import { FEEDBACK_OUTCOMES, type FeedbackOutcome } from '../../../shared/model/queen-story.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** What the person who received her told, newest first. */
export function Feedback({ line }: { line: QueenDetail }) {
  const words = useWords().queens.feedback;
  const days = useDays();
  return (
    <Section title={words.title}>
      {line.feedback.length === 0 ? <p className="soft">{words.none}</p> : null}
      <dl className="facts" style={{ marginBottom: 14 }}>
        {line.feedback.map((one) => (
          <div key={one.id} style={{ display: 'contents' }}>
            <dt className="nowrap">{days.dated(one.toldOn)}</dt>
            <dd>
              <strong>{words.outcomes[one.outcome]}</strong> {[one.note, one.toldBy].filter(Boolean).join(' · ')}
            </dd>
          </div>
        ))}
      </dl>
      <FeedbackForm line={line} />
    </Section>
  );
}

function FeedbackForm({ line }: { line: QueenDetail }) {
  const words = useWords().queens.feedback;
  const today = useToday();
  const [outcome, setOutcome] = useState<FeedbackOutcome>('lays-well');
  const [day, setDay] = useState<string | null>(today);
  const [from, setFrom] = useState(line.queen.goneTo ?? '');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`feedback-note:${line.queen.id}`, '');
  const record = useChange(ask.queens.recordFeedback.mutate);
  const problem = useProblemOf(record.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const told = { id: newId(), queenId: line.queen.id, toldOn: day, outcome };
    if (await record.run({ ...told, toldBy: from.trim() || null, note: note.trim() || null })) forgetNote();
  };
  return (
    <form className="stack" onSubmit={(event) => void submit(event)}>
      <div className="row">
        <ChoiceField
          label={words.outcome}
          value={outcome}
          choices={FEEDBACK_OUTCOMES.map((value) => ({ value, text: words.outcomes[value] }))}
          onChange={setOutcome}
        />
        <DayField label={words.toldOn} value={day} onChange={setDay} problem={problem('toldOn')} />
        <TextField label={words.toldBy} value={from} onChange={setFrom} problem={problem('toldBy')} />
      </div>
      <TextField label={words.note} value={note} onChange={setNote} problem={problem('note')} />
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={['toldOn', 'toldBy', 'note']} />
    </form>
  );
}
