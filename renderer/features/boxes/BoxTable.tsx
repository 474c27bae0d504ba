import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { DataTable } from '../../components/DataTable.tsx';
import type { Column } from '../../components/PlainTable.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { ChosenMark } from './BoxTile.tsx';
import type { BoxWalk } from './box-walk.ts';
import { StateSign } from './StateSign.tsx';
import { type Choosing, keepSpace } from './use-choosing.ts';

/** The boxes as a list, in walking order. */
export function BoxTable({ boxes, choosing }: { boxes: readonly BoxLine[]; choosing: Choosing }) {
  const { boxes: words } = useWords();
  const walk: BoxWalk = { run: 'across', lines: boxes.map((box) => [box.id]) };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the codes have the focus, their keys are heard here
    <div onKeyDown={(event) => choosing.onKeyDown(walk, event)} onKeyUp={keepSpace}>
      <DataTable
        caption={words.title}
        rows={boxes}
        rowKey={(box) => box.id}
        columns={useBoxColumns(choosing, walk)}
        chosen={(box) => choosing.ids.has(box.id)}
      />
    </div>
  );
}

function useBoxColumns(choosing: Choosing, walk: BoxWalk): readonly Column<BoxLine>[] {
  const { boxes: words, looks } = useWords();
  const days = useDays();
  const { columns } = words;
  const day = (on: string | null) => (on ? <span className="nowrap">{days.short(on)}</span> : '');
  return [
    {
      key: 'box',
      title: columns.box,
      head: true,
      cell: (box) => (
        <>
          <button
            type="button"
            className="as-text"
            data-box={box.id}
            onClick={(event) => choosing.onClick(walk, box.id, event)}
          >
            {box.code}
          </button>
          {choosing.ids.has(box.id) ? <ChosenMark /> : null}
        </>
      ),
    },
    { key: 'row', title: columns.row, cell: (box) => [box.yard, box.row].filter(Boolean).join(', ') },
    {
      key: 'state',
      title: columns.state,
      cell: (box) => (
        <span className="nowrap">
          <StateSign state={box.state} /> {words.states[box.state]}
        </span>
      ),
    },
    {
      key: 'batch',
      title: columns.batch,
      cell: (box) => (box.batchId ? <a href={`#/batches/${box.batchId}`}>{box.batch}</a> : ''),
    },
    {
      key: 'mother',
      title: columns.mother,
      cell: (box) => box.breeder && <a href={`#/hives/${box.breederId}`}>{box.breeder}</a>,
    },
    { key: 'placed', title: columns.placed, cell: (box) => day(box.placedOn) },
    {
      key: 'day',
      title: columns.day,
      cell: (box) => (box.daysSinceEmergence === null ? '' : words.day(box.daysSinceEmergence)),
    },
    { key: 'last', title: columns.last, cell: (box) => (box.lastResult ? looks[box.lastResult].name : '') },
    { key: 'next', title: columns.next, cell: (box) => day(box.nextLookOn) },
    {
      key: 'queen',
      title: columns.queen,
      cell: (box) => box.queenNumber && <a href={`#/queens/${box.queenId}`}>{box.queenNumber}</a>,
    },
  ];
}
