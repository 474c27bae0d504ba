import { Button } from '@mui/material';
import { type KeyboardEvent, useRef, useState } from 'react';
import { BOX_TURNAROUND } from '../../../shared/biology/box-turnaround.ts';
import type { BoxLine, ProposalLine } from '../../../shared/contract/boxes.ts';
import type { Words } from '../../../shared/text/english/english.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useSentences, useWords } from '../../components/words.ts';

type Proposed = BoxLine & { readonly proposal: ProposalLine; readonly placementId: string };
const isProposed = (box: BoxLine): box is Proposed => box.proposal !== null && box.placementId !== null;

/** What could be done with which box, and why; Enter accepts, Up and Down walk. */
export function Proposals({ boxes }: { boxes: readonly BoxLine[] }) {
  const { proposals: words } = useWords().boxes;
  const list = useRef<HTMLUListElement>(null);
  const [freed, setFreed] = useState<string | null>(null);
  const accept = useChange(ask.boxes.acceptProposal.mutate);
  const proposed = boxes.filter(isProposed);
  const onAccept = async (box: Proposed) => {
    const { placementId, proposal } = box;
    const done = await accept.run({ boxId: box.id, placementId, kind: proposal.kind, on: days.today });
    if (!done) return;
    setFreed(outcomeText(done.boxes[0], words, days.short));
    buttonsOf(list.current)[0]?.focus();
  };
  const days = useDays();
  if (boxes.every((box) => box.state === 'free' || box.state === 'retired')) return null;
  return (
    <Section title={words.title}>
      <p className="soft" style={{ marginBottom: 8 }}>
        {proposed.length === 0 ? words.none : words.lead}
      </p>
      <ul className="jobs" ref={list} onKeyDown={(event) => walk(event, list.current)}>
        {proposed.map((box) => (
          <ProposalRow key={box.id} box={box} busy={accept.state.busy} onAccept={() => void onAccept(box)} />
        ))}
      </ul>
      {freed ? (
        <p className="line-good" role="status">
          {freed}
        </p>
      ) : null}
      <ChangeLines {...accept.state} />
      <Sources />
    </Section>
  );
}

function outcomeText(box: BoxLine | undefined, words: Words['boxes']['proposals'], day: (on: string) => string) {
  if (!box) return null;
  if (box.state !== 'free') return box.nextLookOn ? words.planned(box.code, day(box.nextLookOn)) : null;
  return [words.freed(box.code), box.freeFrom ? words.freeFrom(day(box.freeFrom)) : ''].join(' ');
}

const buttonsOf = (list: HTMLUListElement | null): readonly HTMLElement[] => [
  ...(list?.querySelectorAll<HTMLElement>('button') ?? []),
];

/** Up and Down go from one button to the next. */
function walk(event: KeyboardEvent, list: HTMLUListElement | null): void {
  const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  if (step === 0) return;
  const buttons = buttonsOf(list);
  const next = buttons[buttons.indexOf(document.activeElement as HTMLElement) + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

function ProposalRow({ box, busy, onAccept }: { box: Proposed; busy: boolean; onAccept: () => void }) {
  const say = useSentences();
  const { proposals: words } = useWords().boxes;
  const days = useDays();
  const { kind, on, reasons, cells } = box.proposal;
  return (
    <li>
      <div className="where">{box.code}</div>
      <div className="what">
        <strong>{words.what(kind, box.state === 'proved')}</strong>{' '}
        {kind === 'look-again' ? words.on(days.short(on)) : null}
        <div className="soft small">{reasons.map((reason) => say.proposal(reason)).join(' ')}</div>
        {cells ? (
          <a className="small" href={`#/batches/${cells.batchId}?open=place`}>
            {words.placeCells(cells.batch)}
          </a>
        ) : null}
      </div>
      <div>
        <Button
          variant="outlined"
          disabled={busy}
          aria-label={words.acceptRead(words.accept[kind], box.code)}
          onClick={onAccept}
        >
          {words.accept[kind]}
        </Button>
      </div>
    </li>
  );
}

/** The figures behind the proposals, each with its range and source. */
function Sources() {
  const { boxes, sources } = useWords();
  const words = boxes.proposals;
  const rows = Object.entries(BOX_TURNAROUND).map(([key, fact]) => ({ key, ...fact }));
  return (
    <details>
      <summary>{words.sources}</summary>
      <DataTable
        caption={words.sources}
        rows={rows}
        rowKey={(row) => row.key}
        columns={[
          {
            key: 'what',
            title: words.factColumns.what,
            head: true,
            cell: (row) => words.facts[row.key as keyof typeof words.facts],
          },
          { key: 'days', title: words.factColumns.days, numeric: true, cell: (row) => row.value },
          {
            key: 'range',
            title: words.factColumns.range,
            cell: (row) => (row.range ? `${row.range[0]}–${row.range[1]}` : ''),
          },
          { key: 'source', title: words.factColumns.source, cell: (row) => sources.told(row.source) },
        ]}
      />
    </details>
  );
}
