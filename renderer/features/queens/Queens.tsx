import { Button } from '@mui/material';
import { useState } from 'react';
import type { QueenLine } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { YearColourMark } from '../../components/YearColourMark.tsx';
import { QueenForm } from './QueenForm.tsx';

const GONE: readonly string[] = ['given', 'sold', 'dead', 'lost'];

/** The register of queens with a number. */
export function Queens({ queenId }: { queenId: string | null }) {
  const { queens: words } = useWords();
  const [chosen, setChosen] = useState(queenId);
  const [show, setShow] = useState<'all' | 'here'>('all');
  const list = useAnswer(['queens'], () => ask.queens.listQueens.query());
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const lines = list.data.filter((line) => show === 'all' || !GONE.includes(line.queen.place));
  const queen = list.data.find((line) => line.queen.id === chosen)?.queen ?? null;
  return (
    <Page
      title={words.title}
      acts={
        <Button variant="contained" onClick={() => setChosen('new')}>
          {words.add}
        </Button>
      }
    >
      {chosen === 'new' || queen ? (
        <QueenForm key={chosen} queen={queen} lines={list.data} onClose={() => setChosen(null)} />
      ) : null}
      {list.data.length === 0 ? (
        <EmptyState title={words.empty} />
      ) : (
        <Section title={words.count(lines.length)} acts={<ShowChoice show={show} setShow={setShow} />}>
          <QueenTable lines={lines} onChoose={setChosen} />
        </Section>
      )}
    </Page>
  );
}

function ShowChoice({ show, setShow }: { show: 'all' | 'here'; setShow: (show: 'all' | 'here') => void }) {
  const { queens: words } = useWords();
  return (
    <ChoiceField
      label={words.filter}
      value={show}
      choices={[
        { value: 'all', text: words.all },
        { value: 'here', text: words.here },
      ]}
      onChange={setShow}
    />
  );
}

function QueenTable({ lines, onChoose }: { lines: readonly QueenLine[]; onChoose: (queenId: string) => void }) {
  const { queens: words } = useWords();
  const days = useDays();
  const { columns } = words;
  const day = (on: string | null) => (on ? <span className="nowrap">{days.short(on)}</span> : '');
  return (
    <DataTable
      caption={words.title}
      rows={lines}
      rowKey={(line) => line.queen.id}
      quiet={(line) => GONE.includes(line.queen.place)}
      columns={[
        {
          key: 'number',
          title: columns.number,
          head: true,
          cell: ({ queen }) => (
            <button type="button" className="as-text nowrap" onClick={() => onChoose(queen.id)}>
              {queen.number}
            </button>
          ),
        },
        { key: 'colour', title: columns.colour, cell: (line) => <YearColourMark colour={line.yearColour} /> },
        {
          key: 'mother',
          title: columns.mother,
          cell: ({ breeder, queen }) => [breeder, queen.motherLine].filter(Boolean).join(', '),
        },
        {
          key: 'batch',
          title: columns.batch,
          cell: ({ batch, queen }) => (batch ? <a href={`#/batches/${queen.batchId}`}>{batch}</a> : ''),
        },
        { key: 'eggs', title: columns.eggs, cell: ({ queen }) => day(queen.firstEggsOn) },
        { key: 'proved', title: columns.proved, cell: ({ queen }) => day(queen.provedOn) },
        {
          key: 'place',
          title: columns.place,
          cell: ({ queen, box, hive }) =>
            [words.places[queen.place], box ?? hive ?? queen.goneTo].filter(Boolean).join(': '),
        },
        { key: 'note', title: columns.note, cell: ({ queen }) => queen.note ?? '' },
      ]}
    />
  );
}
