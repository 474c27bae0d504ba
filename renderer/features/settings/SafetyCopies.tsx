import { Button } from '@mui/material';
import { useState } from 'react';
import type { CopyList, SafetyCopy } from '../../../shared/contract/copies.ts';
import { ask } from '../../client/client.ts';
import { useAnswer, useChange, useOtherWorkbook } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { useMoment } from '../../components/moments.ts';
import type { Column } from '../../components/PlainTable.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { type CopyRow, copyRows } from './copy-rows.ts';
import { GoBack } from './GoBack.tsx';
import { SecondPlace } from './SecondPlace.tsx';

/** How many are shown before the person asks for all. */
const FIRST = 8;

/** The copies of the open workbook, or of the one that could not be opened: look, go back, make one more. */
export function SafetyCopies({ atStart = false }: { atStart?: boolean }) {
  const { copies: words } = useWords();
  const list = useAnswer(['copies'], () => ask.copies.listCopies.query());
  const make = useChange(() => ask.copies.makeCopy.mutate());
  const moment = useMoment();
  const [made, setMade] = useState<SafetyCopy | null>(null);
  if (!list.data?.of) return null;
  return (
    <Section title={words.title}>
      {atStart ? null : <p style={{ maxWidth: '72ch' }}>{words.line}</p>}
      <p className="soft small" style={{ overflowWrap: 'anywhere', margin: '6px 0 14px' }}>
        {words.keptIn(list.data.folder)}
      </p>
      {list.data.hold ? <Hold hold={list.data.hold} /> : null}
      <List list={list.data} atStart={atStart} />
      {atStart ? null : (
        <>
          <div className="acts" style={{ margin: '14px 0' }}>
            <Button
              variant="outlined"
              disabled={make.state.busy}
              onClick={async () => setMade(await make.run(undefined))}
            >
              {words.make}
            </Button>
            {made ? (
              <span className="line-good" role="status">
                {words.made(moment(made.at))}
              </span>
            ) : null}
          </div>
          <ChangeLines {...make.state} />
          <SecondPlace key={list.data.secondPlace?.folder ?? ''} second={list.data.secondPlace} />
        </>
      )}
    </Section>
  );
}

function Hold({ hold }: { hold: NonNullable<CopyList['hold']> }) {
  const { copies: words } = useWords();
  const release = useChange(() => ask.copies.releaseCopies.mutate());
  return (
    <div style={{ marginBottom: 14 }}>
      <p className="line-notice">{words.hold[hold]}</p>
      <Button size="small" variant="outlined" onClick={() => void release.run(undefined)}>
        {words.goOn}
      </Button>
      <ChangeLines {...release.state} />
    </div>
  );
}

function List({ list, atStart }: { list: CopyList; atStart: boolean }) {
  const { copies: words, frame } = useWords();
  const [all, setAll] = useState(false);
  const [chosen, setChosen] = useState<CopyRow | null>(null);
  const look = useOtherWorkbook(ask.copies.openCopy.mutate);
  const lookInside = async (copy: SafetyCopy) => {
    if (await look.run({ copy: copy.id })) goTo('/today');
  };
  const columns = useColumns(atStart, (copy) => void lookInside(copy), setChosen);
  if (list.copies.length === 0) return <p>{words.none}</p>;
  const rows = copyRows(list.copies);
  const shown = all ? rows : rows.slice(0, FIRST);
  return (
    <>
      <DataTable caption={words.title} rows={shown} rowKey={({ id }) => id} columns={columns} />
      {shown.length < rows.length ? (
        <Button size="small" onClick={() => setAll(true)}>
          {frame.moreLines(rows.length - shown.length)}
        </Button>
      ) : null}
      <ChangeLines {...look.state} />
      {chosen ? (
        <GoBack key={chosen.id} copy={chosen} of={list.of} askFolder={atStart} onLeave={() => setChosen(null)} />
      ) : null}
    </>
  );
}

/** On the first page there is room for what tells the copies apart, and for what can be done. */
function useColumns(
  atStart: boolean,
  onLook: (copy: CopyRow) => void,
  onChoose: (copy: CopyRow) => void,
): readonly Column<CopyRow>[] {
  const { copies: words } = useWords();
  const moment = useMoment();
  const count = (key: 'hives' | 'batches' | 'looks' | 'queens'): Column<CopyRow> => ({
    key,
    title: words.columns[key],
    numeric: true,
    cell: ({ counts }) => counts?.[key] ?? <span className="soft">{words.unknown}</span>,
  });
  const wide: readonly Column<CopyRow>[] = [
    { key: 'why', title: words.columns.why, cell: ({ purpose }) => words.purposes[purpose] },
    count('hives'),
  ];
  const checked: Column<CopyRow> = {
    key: 'checked',
    title: words.columns.checked,
    cell: (copy) => (copy.checked ? words.checked : <span className="bad">{words.notChecked}</span>),
  };
  const place: Column<CopyRow> = { key: 'place', title: words.columns.place, cell: ({ where }) => words.places[where] };
  return [
    { key: 'at', title: words.columns.at, head: true, cell: ({ at }) => <span className="nowrap">{moment(at)}</span> },
    ...(atStart ? [] : wide),
    count('batches'),
    count('looks'),
    count('queens'),
    checked,
    ...(atStart ? [] : [place]),
    {
      key: 'acts',
      title: words.columns.acts,
      cell: (copy) => (
        <span className={atStart ? undefined : 'nowrap'}>
          <Button size="small" aria-label={words.lookAt(moment(copy.at))} onClick={() => onLook(copy)}>
            {words.look}
          </Button>
          <Button size="small" aria-label={words.goBackTo(moment(copy.at))} onClick={() => onChoose(copy)}>
            {words.goBack}
          </Button>
        </span>
      ),
    },
  ];
}
