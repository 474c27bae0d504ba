import type { MotherRef, QueenLine } from '../../../shared/contract/queens.ts';
import { DataTable } from '../../components/DataTable.tsx';
import type { Column } from '../../components/PlainTable.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { YearColourMark } from '../../components/YearColourMark.tsx';
import { isHere } from './queens-shown.ts';

export function QueenTable({ lines }: { lines: readonly QueenLine[] }) {
  const { queens: words } = useWords();
  return (
    <DataTable
      caption={words.title}
      rows={lines}
      rowKey={(line) => line.queen.id}
      quiet={(line) => !isHere(line.queen.place)}
      columns={useColumns()}
    />
  );
}

function useColumns(): readonly Column<QueenLine>[] {
  const { queens: words } = useWords();
  const days = useDays();
  const { columns } = words;
  const day = (on: string | null) => (on ? <span className="nowrap">{days.dated(on)}</span> : '');
  return [
    {
      key: 'number',
      title: columns.number,
      head: true,
      cell: ({ queen }) => (
        <a className="nowrap" href={`#/queens/${queen.id}`}>
          {queen.number}
        </a>
      ),
    },
    { key: 'colour', title: columns.colour, cell: (line) => <YearColourMark colour={line.yearColour} /> },
    { key: 'line', title: columns.line, cell: ({ queen }) => queen.motherLine ?? '' },
    { key: 'mother', title: columns.mother, cell: ({ mother }) => <MotherLink mother={mother} /> },
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
      cell: ({ queen, box, hive, promise }) => (
        <>
          {[words.places[queen.place], box ?? hive ?? queen.goneTo].filter(Boolean).join(': ')}
          {promise ? (
            <div className="small">
              {promise.byWhen
                ? words.promise.toBy(promise.promisedTo, days.dated(promise.byWhen))
                : words.promise.to(promise.promisedTo)}
            </div>
          ) : null}
        </>
      ),
    },
    { key: 'note', title: columns.note, cell: ({ queen }) => queen.note ?? '' },
  ];
}

export function MotherLink({ mother }: { mother: MotherRef | null }) {
  if (!mother) return null;
  return (
    <a className="nowrap" href={`#/${mother.kind === 'queen' ? 'queens' : 'hives'}/${mother.id}`}>
      {mother.name}
    </a>
  );
}
