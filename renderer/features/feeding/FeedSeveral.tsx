import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { Feed } from '../../../shared/model/feeding.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useFeedAmounts, useWords } from '../../components/words.ts';

interface FeedSeveralProps {
  /** Codes it opens with; null = it stays folded. */
  readonly chosen: string | null;
  readonly day: IsoDay;
  readonly feed: Feed;
  readonly ownFeed: string | null;
  readonly measure: 'litres' | 'kilograms';
}

/** The same amount for a whole set of boxes or hives, said by their codes. */
export function FeedSeveral({ chosen, day, feed, ownFeed, measure }: FeedSeveralProps) {
  const { feeding: words } = useWords();
  const { unit } = useFeedAmounts();
  const [codes, setCodes] = useState(chosen ?? '');
  const [amount, setAmount] = useState('');
  const { value: note, set: setNote, found, forget: forgetNote } = useDraft('feed-several-note', '');
  const [given, setGiven] = useState<number | null>(null);
  const feedAll = useChange(ask.feeding.feedSeveral.mutate);
  const problem = useProblemOf(feedAll.state.refusal);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const ids = Array.from({ length: Math.max(1, readBoxCodes(codes)?.length ?? 1) }, newId);
    const all = { ids, places: codes, fedOn: day, feed, ownFeed, amount, note: note.trim() || null };
    setGiven(null);
    const saved = await feedAll.run(all);
    if (!saved) return;
    setGiven(saved.feedings.length);
    for (const clear of [setCodes, setAmount]) clear('');
    forgetNote();
  };
  return (
    <details style={{ margin: '14px 0' }} open={chosen !== null}>
      <summary>{words.several}</summary>
      <form className="stack" onSubmit={(event) => void submit(event)}>
        <div className="row">
          <TextField
            label={words.codes}
            value={codes}
            onChange={setCodes}
            hint={words.codesHint}
            problem={problem('places')}
            required
          />
          <TextField
            label={words.amountIn(unit(measure))}
            value={amount}
            onChange={setAmount}
            problem={problem('amount')}
          />
          <TextField label={words.columns.note} value={note} onChange={setNote} problem={problem('note')} />
        </div>
        <div className="acts">
          <Button type="submit" variant="outlined" disabled={feedAll.state.busy || codes.trim() === ''}>
            {words.giveAll}
          </Button>
          {given === null ? null : (
            <span className="line-good" role="status">
              {words.summary(given)}
            </span>
          )}
        </div>
        <FoundDraft found={found} />
        <ChangeLines {...feedAll.state} ownFields={['places', 'amount', 'note']} />
      </form>
    </details>
  );
}
