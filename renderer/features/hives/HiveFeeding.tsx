import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import { type Feed, feedMeasure } from '../../../shared/model/feeding.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useAnswer, useChange } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FeedCaution, FeedChoice } from '../../components/FeedChoice.tsx';
import { FeedingLines } from '../../components/FeedingLines.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useFeedAmounts, useToday, useWords } from '../../components/words.ts';

/** What the hive was fed, newest first, and the form for one more. */
export function HiveFeeding({ colonyId }: { colonyId: string }) {
  const { feeding: words } = useWords();
  const asked = { place: 'hive', id: colonyId } as const;
  const feedings = useAnswer(['feedings', asked], () => ask.feeding.listFeedings.query(asked));
  const remove = useTakeOut(ask.feeding.removeFeeding.mutate);
  return (
    <Section title={words.list}>
      <FeedingLines
        feedings={feedings.data ?? []}
        onRemove={(feedingId) => void remove.run({ feedingId })}
        busy={remove.state.busy}
      />
      <ChangeLines {...remove.state} />
      <details>
        <summary>{words.add}</summary>
        <FeedingForm colonyId={colonyId} />
      </details>
    </Section>
  );
}

function FeedingForm({ colonyId }: { colonyId: string }) {
  const { feeding: words } = useWords();
  const { unit } = useFeedAmounts();
  const today = useToday();
  const [day, setDay] = useState<string | null>(today);
  const [feed, setFeed] = useState<Feed>('syrup-1-1');
  const [ownFeed, setOwnFeed] = useState('');
  const [amount, setAmount] = useState('');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft(`feeding-note:${colonyId}`, '');
  const record = useChange(ask.feeding.recordFeeding.mutate);
  const problem = useProblemOf(record.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (day === null) return;
    const typed = { feed, ownFeed: feed === 'other' ? ownFeed : null, amount, note: note.trim() || null };
    if (!(await record.run({ id: newId(), place: 'hive', placeId: colonyId, fedOn: day, ...typed }))) return;
    setAmount('');
    forgetNote();
  };
  return (
    <form className="stack prints" onSubmit={(event) => void submit(event)}>
      <FeedCaution feed={feed} />
      <div className="row">
        <DayField label={words.on} value={day} onChange={setDay} problem={problem('fedOn')} />
        <FeedChoice
          feed={feed}
          ownFeed={ownFeed}
          onFeed={setFeed}
          onOwnFeed={setOwnFeed}
          problem={problem('ownFeed')}
        />
      </div>
      <div className="row">
        <TextField
          label={words.amountIn(unit(feedMeasure(feed)))}
          value={amount}
          onChange={setAmount}
          problem={problem('amount')}
        />
        <TextField label={words.columns.note} value={note} onChange={setNote} problem={problem('note')} />
      </div>
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null}>
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={['fedOn', 'ownFeed', 'amount', 'note']} />
    </form>
  );
}
