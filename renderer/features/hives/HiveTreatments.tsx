import { Button } from '@mui/material';
import { type FormEvent, useState } from 'react';
import type { HiveRecords } from '../../../shared/contract/stock.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** Treatments as they were done. The caution stands beside the form, always in sight. */
export function HiveTreatments({ colonyId, records }: { colonyId: string; records: HiveRecords }) {
  const words = useWords().stock.treatments;
  const days = useDays();
  return (
    <Section title={words.title}>
      {records.treatments.length === 0 ? <p className="soft">{words.none}</p> : null}
      <dl className="facts" style={{ marginBottom: 10 }}>
        {records.treatments.map((one) => (
          <div key={one.id} style={{ display: 'contents' }}>
            <dt className="nowrap">
              {one.toOn ? words.span(days.dated(one.fromOn), days.dated(one.toOn)) : days.dated(one.fromOn)}
            </dt>
            <dd>{[one.product, one.amount, one.reason, one.paper, one.note].filter(Boolean).join(' · ')}</dd>
          </div>
        ))}
      </dl>
      <details>
        <summary>{words.add}</summary>
        <p className="line-notice" style={{ marginBottom: 10 }}>
          {words.caution}
        </p>
        <TreatmentForm colonyId={colonyId} />
      </details>
    </Section>
  );
}

const EMPTY = { product: '', amount: '', reason: '', paper: '', note: '' };
const OWN_FIELDS = ['fromOn', 'toOn', ...Object.keys(EMPTY)];

function TreatmentForm({ colonyId }: { colonyId: string }) {
  const words = useWords().stock.treatments;
  const today = useToday();
  const [from, setFrom] = useState<string | null>(today);
  const [to, setTo] = useState<string | null>(null);
  const { value: typed, set: setTyped, found, forget } = useDraft(`treatment:${colonyId}`, EMPTY);
  const record = useChange(ask.hives.recordTreatment.mutate);
  const problem = useProblemOf(record.state.refusal);
  const field = (key: keyof typeof EMPTY) => (
    <TextField
      label={words[key]}
      value={typed[key]}
      onChange={(text) => setTyped((before) => ({ ...before, [key]: text }))}
      problem={problem(key)}
      required={key === 'product'}
    />
  );
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (from === null) return;
    const { product, ...rest } = typed;
    const texts = Object.fromEntries(Object.entries(rest).map(([key, text]) => [key, text.trim() || null]));
    const treatment = { id: newId(), colonyId, fromOn: from, toOn: to, product };
    if (await record.run({ ...treatment, ...(texts as Record<keyof typeof rest, string | null>) })) forget();
  };
  return (
    <form className="stack prints" onSubmit={(event) => void submit(event)}>
      <div className="row">
        {field('product')}
        {field('amount')}
        {field('reason')}
      </div>
      <div className="row">
        <DayField label={words.from} value={from} onChange={setFrom} problem={problem('fromOn')} />
        <DayField label={words.to} value={to} onChange={setTo} problem={problem('toOn')} />
      </div>
      <div className="row">
        {field('paper')}
        {field('note')}
      </div>
      <div className="acts">
        <Button
          type="submit"
          variant="outlined"
          disabled={record.state.busy || from === null || typed.product.trim() === ''}
        >
          {words.add}
        </Button>
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...record.state} ownFields={OWN_FIELDS} />
    </form>
  );
}
