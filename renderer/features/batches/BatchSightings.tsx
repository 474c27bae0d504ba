import { Button } from '@mui/material';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { REMEDIES_BY_SIGHTING } from '../../../shared/biology/remedies.ts';
import type { BatchDetail } from '../../../shared/contract/batches.ts';
import { OBSERVATION_KINDS, type ObservationKind } from '../../../shared/model/step.ts';
import { newId } from '../../client/hooks.ts';
import { useSlip } from '../../client/use-slip.ts';
import { AskedSlipDialog } from '../../components/AskedSlipDialog.tsx';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DayField } from '../../components/DayField.tsx';
import { Remedies } from '../../components/Remedies.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';
import { Warmth } from './Warmth.tsx';

/** Kinds that say an age or size and so need hours. */
const NEED_HOURS: readonly ObservationKind[] = ['larva-size', 'larva-age-note', 'larvae-too-old'];

/** What was really seen, and the form for one thing more; the open days of the timetable follow. */
export function BatchSightings({ batch, focus }: { batch: BatchDetail; focus: boolean }) {
  const words = useWords();
  const { one } = words.batches;
  const days = useDays();
  const slip = useSlip();
  return (
    <Section title={one.seen}>
      <p className="soft small">{one.seenHint}</p>
      {batch.observations.length === 0 ? <p className="soft">{one.seenNone}</p> : null}
      <ul>
        {batch.observations.map((seen) => (
          <li key={seen.id}>
            {words.sightings[seen.what].name}, {days.short(seen.seenOn)}{' '}
            <Button
              size="small"
              onClick={() =>
                void slip.propose({ kind: 'unsee', change: { batchId: batch.id, observationId: seen.id } })
              }
            >
              {one.remove}
            </Button>
            <Remedies {...REMEDIES_BY_SIGHTING[seen.what]} />
          </li>
        ))}
      </ul>
      <ChangeLines {...slip.state} />
      <AskedSlipDialog batch={batch.code} slip={slip} />
      <SightingForm batch={batch} focus={focus} />
      <Warmth batch={batch} />
    </Section>
  );
}

function SightingForm({ batch, focus }: { batch: BatchDetail; focus: boolean }) {
  const words = useWords();
  const { one } = words.batches;
  const today = useToday();
  const [what, setWhat] = useState<ObservationKind>('cells-sealed');
  const [day, setDay] = useState<string | null>(today);
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const record = useSlip();
  const problem = useProblemOf(record.state.refusal);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (focus) form.current?.querySelector('select')?.focus();
  }, [focus]);
  const hours = (text: string) => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (day !== null)
      void record.propose({
        kind: 'see',
        change: {
          id: newId(),
          batchId: batch.id,
          what,
          seenOn: day,
          fromHours: hours(from),
          toHours: hours(to),
          note: null,
        },
      });
  };
  return (
    <form className="stack" ref={form} onSubmit={submit}>
      <div className="row">
        <div style={{ flex: '2 1 220px' }}>
          <ChoiceField
            label={one.seenWhat}
            value={what}
            choices={OBSERVATION_KINDS.map((kind) => ({ value: kind, text: words.sightings[kind].ask }))}
            onChange={setWhat}
          />
        </div>
        <div style={{ flex: '1 1 170px' }}>
          <DayField label={one.seenDay} value={day} onChange={setDay} problem={problem('seenOn', 'seen')} />
        </div>
      </div>
      {NEED_HOURS.includes(what) ? (
        <div className="row">
          <TextField label={one.seenFrom} value={from} onChange={setFrom} numeric />
          <TextField label={one.seenTo} value={to} onChange={setTo} numeric />
        </div>
      ) : null}
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={record.state.busy || day === null}>
          {one.seenAdd}
        </Button>
      </div>
      <ChangeLines {...record.state} ownFields={['seenOn', 'seen']} />
      <AskedSlipDialog batch={batch.code} slip={record} />
    </form>
  );
}
