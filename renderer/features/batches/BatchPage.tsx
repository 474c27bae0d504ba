import { Button } from '@mui/material';
import type { BatchDetail, HiveRef } from '../../../shared/contract/batches.ts';
import { Stream } from '../../charts/Stream.tsx';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useRecordHistory } from '../../client/record-history.ts';
import { FlightLines } from '../../components/FlightLines.tsx';
import { HistoryFold } from '../../components/HistoryFold.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { StaleCalendar } from '../../components/StaleCalendar.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { BarCounts } from './BarCounts.tsx';
import { BatchBoxes } from './BatchBoxes.tsx';
import { BatchClashes } from './BatchClashes.tsx';
import { BatchExpected } from './BatchExpected.tsx';
import { BatchLosses } from './BatchLosses.tsx';
import { BatchNotes } from './BatchNotes.tsx';
import { BatchSightings } from './BatchSightings.tsx';
import { Contradictions } from './Contradictions.tsx';
import { DroneLines } from './DroneLines.tsx';
import { useFactText } from './fact-text.ts';
import { RemoveBatch } from './RemoveBatch.tsx';
import { Timetable } from './Timetable.tsx';

/** One batch: where it stands, how many are left, what is forbidden, what is next. */
export function BatchPage({ batchId, open }: { batchId: string; open: string | null }) {
  const words = useWords();
  const { one } = words.batches;
  const answer = useAnswer(['batch', batchId], () => ask.batches.getBatch.query({ batchId }));
  if (answer.data === null)
    return (
      <Page lead={<a href="#/batches">{words.batches.title}</a>} title={words.batches.title}>
        {one.gone}
      </Page>
    );
  if (!answer.data) return <Page title="…">{null}</Page>;
  const batch = answer.data;
  return (
    <Page
      lead={<a href="#/batches">{one.back}</a>}
      title={
        <>
          {batch.code} <span className="soft">{batch.methodName ?? words.methods[batch.method].name}</span>
        </>
      }
      acts={<Acts batch={batch} />}
    >
      <Facts batch={batch} />
      <BatchClashes batchId={batch.id} />
      <StaleCalendar batchId={batch.id} />
      <Stream stream={batch.stream} />
      <div className="columns wide-left">
        <Timetable batch={batch} open={open?.startsWith('day-') ? open.replace('day-', '') : null} />
        <div>
          <BarCounts batch={batch} focus={open?.startsWith('counts') ? open.replace(/^counts-?/, '') : null} />
          <BatchBoxes batch={batch} focus={open === 'place'} />
          <BatchExpected batch={batch} />
          <BatchLosses batch={batch} />
          <BatchSightings batch={batch} focus={open === 'seen'} />
          <BatchNotes batch={batch} focus={open === 'close'} />
        </div>
      </div>
      <BatchHistory batchId={batch.id} />
      <RemoveBatch batchId={batch.id} />
    </Page>
  );
}

function BatchHistory({ batchId }: { batchId: string }) {
  return <HistoryFold {...useRecordHistory('batch', batchId)} />;
}

function Acts({ batch }: { batch: BatchDetail }) {
  const { batches: words } = useWords();
  return (
    <>
      <Button onClick={() => goTo(another(batch))}>{words.one.another}</Button>
      {batch.placements.length > 0 ? <BoxActs batch={batch} /> : null}
    </>
  );
}

/** The start form as this batch was begun, for today. */
function another({ batch, method, breeder, builder }: BatchDetail): string {
  const asked = new URLSearchParams({ method: batch.methodCopyId ?? method });
  if (breeder) asked.set('mother', breeder.code);
  if (builder) asked.set('builder', builder.code);
  if (batch.cellsPlanned) asked.set('cells', String(batch.cellsPlanned));
  return `/batches/new?${asked}`;
}

function BoxActs({ batch }: { batch: BatchDetail }) {
  const { batches: words } = useWords();
  return (
    <>
      <Button variant="outlined" onClick={() => goTo(`/boxes/looks?batch=${batch.id}`)}>
        {words.one.typeLooks}
      </Button>
      <Button variant="outlined" onClick={() => goTo(`/print?batch=${batch.id}`)}>
        {words.one.labels}
      </Button>
    </>
  );
}

function Facts({ batch }: { batch: BatchDetail }) {
  const words = useWords();
  const { one } = words.batches;
  const days = useDays();
  const factText = useFactText(batch);
  const { emergence, placeDeadline, reckonedFrom, drones } = batch.timetable;
  return (
    <div className="section">
      <p>
        {batch.breeder ? <HiveIn sentence={one.from} hive={batch.breeder} /> : null}
        {batch.breeder && batch.builder ? ', ' : ''}
        {batch.builder ? <HiveIn sentence={one.builder} hive={batch.builder} /> : null}
        {batch.practice ? `, ${words.batches.practice}` : ''}
        {batch.closedOn ? `, ${one.closedLine(days.short(batch.closedOn))}` : ''}
      </p>
      <p>
        <strong>
          {one.emergence(days.short(emergence.earliest), days.short(emergence.expected), days.short(emergence.latest))}.
        </strong>{' '}
        {one.deadline(days.short(placeDeadline))}.
      </p>
      <p className="soft">
        {one.reckonedFrom} {factText(reckonedFrom)}.
      </p>
      {batch.flight && batch.state !== 'closed' ? (
        <p>
          <FlightLines flight={batch.flight} />
        </p>
      ) : null}
      {batch.flight === null && days.today < drones.fliesFrom ? (
        <p className="soft">
          <DroneLines drones={drones} queens={batch.tally.sealed ?? batch.batch.cellsPlanned} />
        </p>
      ) : null}
      <Contradictions batch={batch} />
    </div>
  );
}

const HERE = '\u0000';

/** A sentence that names a hive, with the name leading to its page. */
function HiveIn({ sentence, hive }: { sentence: (name: string) => string; hive: HiveRef }) {
  const [before, after] = sentence(HERE).split(HERE);
  return (
    <>
      {before}
      <a href={`#/hives/${hive.id}`}>{nameOf(hive)}</a>
      {after}
    </>
  );
}

const nameOf = (hive: { readonly code: string; readonly name: string | null }) =>
  [hive.code, hive.name].filter(Boolean).join(' ');
