import { Button } from '@mui/material';
import { useState } from 'react';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { AddBoxes } from './AddBoxes.tsx';
import { BoxCard } from './BoxCard.tsx';
import { StateSign } from './StateSign.tsx';

/** The boxes as a board by yard and row, or as a list. */
export function Boxes({ boxId }: { boxId: string | null }) {
  const { boxes: words } = useWords();
  const [asList, setAsList] = useState(false);
  const [chosen, setChosen] = useState(boxId);
  const list = useAnswer(['boxes'], () => ask.boxes.listBoxes.query());
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const box = list.data.find((one) => one.id === chosen);
  return (
    <Page title={words.title} acts={<Acts asList={asList} setAsList={setAsList} any={list.data.length > 0} />}>
      {list.data.length === 0 ? <EmptyState title={words.empty} /> : null}
      {box ? <BoxCard key={box.id} box={box} onClose={() => setChosen(null)} /> : null}
      {asList ? <BoxTable boxes={list.data} /> : <Board boxes={list.data} onChoose={setChosen} />}
      <AddBoxes />
    </Page>
  );
}

function Acts({ asList, setAsList, any }: { asList: boolean; setAsList: (asList: boolean) => void; any: boolean }) {
  const { boxes: words } = useWords();
  if (!any) return null;
  return (
    <>
      <Button onClick={() => setAsList(!asList)}>{asList ? words.board : words.list}</Button>
      <Button variant="contained" onClick={() => goTo('/boxes/looks')}>
        {words.typeLooks}
      </Button>
    </>
  );
}

function Board({ boxes, onChoose }: { boxes: readonly BoxLine[]; onChoose: (boxId: string) => void }) {
  const { boxes: words } = useWords();
  const yards = [...Map.groupBy(boxes, (box) => box.yard ?? words.noYard)];
  return yards.map(([yard, ofYard]) => (
    <Section key={yard} title={yard}>
      {[...Map.groupBy(ofYard, (box) => box.row ?? words.noRow)].map(([row, ofRow]) => (
        <div key={row} style={{ marginBottom: 16 }}>
          <h3 style={{ marginBottom: 6 }}>{row}</h3>
          <div className="board">
            {ofRow.map((box) => (
              <Tile key={box.id} box={box} onChoose={() => onChoose(box.id)} />
            ))}
          </div>
        </div>
      ))}
    </Section>
  ));
}

function Tile({ box, onChoose }: { box: BoxLine; onChoose: () => void }) {
  const { boxes: words } = useWords();
  const days = useDays();
  const since = box.daysSinceEmergence === null || box.state === 'free' ? null : words.day(box.daysSinceEmergence);
  return (
    <button type="button" className={`tile${box.handsOffUntil ? ' hatch' : ''}`} onClick={onChoose}>
      <span className="code-large">
        <StateSign state={box.state} />
        {box.code}
      </span>
      <span>{words.states[box.state]}</span>
      <span className="soft small">{[box.batch, since].filter(Boolean).join(', ')}</span>
      {box.handsOffUntil ? (
        <span className="hands-off small">{words.handsOff(days.short(box.handsOffUntil))}</span>
      ) : null}
    </button>
  );
}

function BoxTable({ boxes }: { boxes: readonly BoxLine[] }) {
  const { boxes: words, looks } = useWords();
  const days = useDays();
  const { columns } = words;
  const day = (on: string | null) => (on ? <span className="nowrap">{days.short(on)}</span> : '');
  return (
    <DataTable
      caption={words.title}
      rows={boxes}
      rowKey={(box) => box.id}
      columns={[
        { key: 'box', title: columns.box, head: true, cell: (box) => box.code },
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
        { key: 'mother', title: columns.mother, cell: (box) => box.breeder ?? '' },
        { key: 'placed', title: columns.placed, cell: (box) => day(box.placedOn) },
        {
          key: 'day',
          title: columns.day,
          cell: (box) => (box.daysSinceEmergence === null ? '' : words.day(box.daysSinceEmergence)),
        },
        { key: 'first', title: columns.first, cell: (box) => day(box.firstLookOn) },
        { key: 'sealed', title: columns.sealed, cell: (box) => day(box.sealedBroodLookOn) },
        { key: 'last', title: columns.last, cell: (box) => (box.lastResult ? looks[box.lastResult].name : '') },
        { key: 'queen', title: columns.queen, cell: (box) => box.queenNumber ?? '' },
      ]}
    />
  );
}
