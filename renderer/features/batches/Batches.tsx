import { Button } from '@mui/material';
import type { BatchLine } from '../../../shared/contract/batches.ts';
import { SmallStream } from '../../charts/Stream.tsx';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

export function Batches() {
  const { batches: words } = useWords();
  const list = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const start = (
    <Button variant="contained" onClick={() => goTo('/batches/new')}>
      {words.start}
    </Button>
  );
  const groups = (['running', 'planned', 'closed'] as const).map((state) => ({
    state,
    lines: (list.data ?? []).filter((line) => line.state === state),
  }));
  return (
    <Page title={words.title} acts={start}>
      {list.data?.length === 0 ? <EmptyState title={words.empty}>{start}</EmptyState> : null}
      {groups
        .filter(({ lines }) => lines.length > 0)
        .map(({ state, lines }) => (
          <Section key={state} title={words[state]}>
            <BatchTable caption={words[state]} lines={lines} closed={state === 'closed'} />
          </Section>
        ))}
    </Page>
  );
}

interface BatchTableProps {
  readonly caption: string;
  readonly lines: readonly BatchLine[];
  /** Nothing lies ahead of closed ones; what they taught stands there instead. */
  readonly closed: boolean;
}

function BatchTable({ caption, lines, closed }: BatchTableProps) {
  const words = useWords();
  const { columns } = words.batches;
  const days = useDays();
  return (
    <DataTable
      caption={caption}
      rows={lines}
      rowKey={(line) => line.id}
      columns={[
        {
          key: 'code',
          title: columns.batch,
          head: true,
          cell: (line) => (
            <span className="nowrap">
              <a href={`#/batches/${line.id}`}>{line.code}</a>
              {line.practice ? <span className="soft small"> {words.batches.practice}</span> : null}
            </span>
          ),
        },
        { key: 'method', title: columns.method, cell: (line) => line.methodName ?? words.methods[line.method].name },
        { key: 'mother', title: columns.mother, cell: (line) => line.breeder?.code ?? words.batches.unknown },
        { key: 'builder', title: columns.builder, cell: (line) => line.builder?.code ?? words.batches.unknown },
        {
          key: 'larvae',
          title: columns.larvae,
          cell: (line) => <span className="nowrap">{days.short(line.larvaeGivenOn)}</span>,
        },
        { key: 'stream', title: columns.stream, cell: (line) => <SmallStream stream={line.stream} /> },
        { key: 'counts', title: columns.counts, cell: (line) => <Counts line={line} /> },
        closed
          ? { key: 'lesson', title: columns.lesson, cell: (line) => line.lesson ?? '' }
          : { key: 'next', title: columns.next, cell: (line) => <Next line={line} /> },
      ]}
    />
  );
}

/** The five numbers in the order the column names them; an unknown one is a dot, never a zero. */
function Counts({ line: { tally } }: { line: BatchLine }) {
  const { batches: words } = useWords();
  const numbers = [
    tally.given,
    tally.taken,
    tally.sealed,
    tally.placed || null,
    tally.matingKnown > 0 ? tally.proved : null,
  ];
  return (
    <span className="nowrap">
      {numbers.map((number, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: five fixed places
        <span key={index}>
          {index > 0 ? ' → ' : ''}
          {number ?? <abbr title={words.one.notCounted}>·</abbr>}
        </span>
      ))}
    </span>
  );
}

function Next({ line }: { line: BatchLine }) {
  const { batches: words, stepTitles } = useWords();
  const days = useDays();
  if (!line.next)
    return (
      <span className="soft">
        {words.nothingNext}; <a href={`#/batches/${line.id}?open=close`}>{words.closeNext}</a>
      </span>
    );
  return (
    <span>
      {stepTitles[line.next.step as keyof typeof stepTitles]},{' '}
      <span className={line.next.late ? 'bad nowrap' : 'nowrap'}>
        {days.short(line.next.on)}
        {line.next.late ? ` (${words.late})` : ''}
      </span>
    </span>
  );
}
