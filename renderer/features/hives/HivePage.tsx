import type { HiveStageStanding } from '../../../shared/contract/forecast.ts';
import type { HiveDetail, SeasonFigures } from '../../../shared/contract/hives.ts';
import type { Step } from '../../../shared/model/step.ts';
import { SmallStream } from '../../charts/Stream.tsx';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useRecordHistory } from '../../client/record-history.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { Figure } from '../../components/Figure.tsx';
import { HandsOffSign } from '../../components/HandsOffSign.tsx';
import { HistoryFold } from '../../components/HistoryFold.tsx';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { DayLine } from './DayLine.tsx';
import { HiveFeeding } from './HiveFeeding.tsx';
import { HiveLooks } from './HiveLooks.tsx';
import { HivePaper } from './HivePaper.tsx';
import { HiveRecords } from './HiveRecords.tsx';
import { HiveRelativesList } from './HiveRelativesList.tsx';
import { HiveRoles } from './HiveRoles.tsx';
import { HiveStandingTable } from './HiveStandingTable.tsx';

/** One hive: what lies ahead of it, how it does as builder and as mother, and what was seen in it. */
export function HivePage({ colonyId }: { colonyId: string }) {
  const { hives: words } = useWords();
  const answer = useAnswer(['hive', colonyId], () => ask.hives.getHive.query({ colonyId }));
  const standing = useAnswer(['hive-standing', colonyId], ({ signal }) =>
    ask.season.getHiveStanding.query({ colonyId }, { signal }),
  );
  if (answer.data === null)
    return (
      <Page lead={<a href="#/hives">{words.title}</a>} title={words.title}>
        {words.one.gone}
      </Page>
    );
  if (!answer.data) return <Page title="…">{null}</Page>;
  const hive = answer.data;
  return (
    <Page lead={<a href="#/hives">{words.title}</a>} title={[hive.code, hive.name].filter(Boolean).join(' ')}>
      <Standing hive={hive} />
      <DayLine days={hive.dayLine} />
      <div className="columns">
        <Figures title={words.one.asBuilder} figures={hive.asBuilder} standing={standing.data?.asBuilder ?? []} />
        <Figures title={words.one.asMother} figures={hive.asBreeder} standing={standing.data?.asMother ?? []} />
        <div>
          <HiveLooks hive={hive} />
          <HiveRelativesList hive={hive} />
        </div>
        <div>
          <HiveFeeding colonyId={colonyId} />
          <HiveRoles hive={hive} />
        </div>
      </div>
      <HiveRecords colonyId={colonyId} />
      <Batches hive={hive} />
      <HivePaper colonyId={colonyId} />
      <HiveHistory colonyId={colonyId} />
    </Page>
  );
}

function HiveHistory({ colonyId }: { colonyId: string }) {
  return <HistoryFold {...useRecordHistory('hive', colonyId)} />;
}

function Standing({ hive }: { hive: HiveDetail }) {
  const { hives: words, stepTitles } = useWords();
  const days = useDays();
  return (
    <div className="section">
      <p>
        {[hive.yard ?? words.noYard, hive.place, hive.motherLine ? `${words.line} ${hive.motherLine}` : null]
          .filter(Boolean)
          .join(', ')}
      </p>
      {hive.handsOff ? (
        <p className="hands-off">
          <HandsOffSign /> <strong>{words.handsOff(days.short(hive.handsOff.until), hive.handsOff.batch)}</strong>{' '}
          {stepTitles[hive.handsOff.step as Step]}
        </p>
      ) : null}
      {hive.newQueen ? (
        <p className="hands-off">
          <HandsOffSign /> <strong>{words.newQueen(days.short(hive.newQueen.until), hive.newQueen.queen)}</strong>
        </p>
      ) : null}
      {hive.batchesFed > 0 ? (
        <p>{hive.freeFrom ? words.one.freeFrom(days.short(hive.freeFrom)) : words.one.freeNow}</p>
      ) : null}
      <StartWith hive={hive} />
    </div>
  );
}

/** A batch with this hive in the part it has this season; as a builder not before the day it is free. */
function StartWith({ hive }: { hive: HiveDetail }) {
  const { hives: words } = useWords();
  const { code, roles, freeFrom } = hive;
  const day = freeFrom ? `&day=${freeFrom}` : '';
  return (
    <p className="acts no-print">
      {roles.includes('builder') ? (
        <a href={`#/batches/new?builder=${encodeURIComponent(code)}${day}`}>{words.one.startAsBuilder}</a>
      ) : null}
      {roles.includes('breeder') ? (
        <a href={`#/batches/new?mother=${encodeURIComponent(code)}`}>{words.one.startAsMother}</a>
      ) : null}
    </p>
  );
}

interface FiguresProps {
  readonly title: string;
  readonly figures: readonly SeasonFigures[];
  readonly standing: readonly HiveStageStanding[];
}

function Figures({ title, figures, standing }: FiguresProps) {
  const { hives: words } = useWords();
  const { columns } = words.one;
  return (
    <Section title={title}>
      {figures.length === 0 ? (
        <p className="soft">{words.one.none}</p>
      ) : (
        <DataTable
          caption={title}
          rows={figures}
          rowKey={(row) => String(row.season)}
          columns={[
            { key: 'season', title: columns.season, head: true, cell: (row) => row.season },
            { key: 'batches', title: columns.batches, numeric: true, cell: (row) => row.batches },
            { key: 'take', title: columns.take, cell: (row) => <Figure figure={row.take} /> },
            { key: 'mating', title: columns.mating, cell: (row) => <Figure figure={row.mating} /> },
          ]}
        />
      )}
      <HiveStandingTable title={title} standing={standing} />
    </Section>
  );
}

function Batches({ hive }: { hive: HiveDetail }) {
  const words = useWords();
  const days = useDays();
  if (hive.batches.length === 0) return null;
  return (
    <Section title={words.hives.one.batches}>
      <DataTable
        caption={words.hives.one.batches}
        rows={hive.batches}
        rowKey={(line) => line.id}
        columns={[
          {
            key: 'code',
            title: words.batches.columns.batch,
            head: true,
            cell: (line) => <a href={`#/batches/${line.id}`}>{line.code}</a>,
          },
          { key: 'method', title: words.batches.columns.method, cell: (line) => words.methods[line.method].name },
          { key: 'larvae', title: words.batches.columns.larvae, cell: (line) => days.short(line.larvaeGivenOn) },
          { key: 'stream', title: words.batches.columns.stream, cell: (line) => <SmallStream stream={line.stream} /> },
          {
            key: 'given',
            title: words.batches.one.given,
            numeric: true,
            cell: (line) => line.tally.given ?? words.batches.one.notCounted,
          },
          {
            key: 'taken',
            title: words.batches.one.taken,
            numeric: true,
            cell: (line) => line.tally.taken ?? words.batches.one.notCounted,
          },
          {
            key: 'sealed',
            title: words.batches.one.sealed,
            numeric: true,
            cell: (line) => line.tally.sealed ?? words.batches.one.notCounted,
          },
        ]}
      />
    </Section>
  );
}
