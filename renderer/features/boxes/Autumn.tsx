import { useState } from 'react';
import { BOX_TURNAROUND, WEAK_STRENGTH } from '../../../shared/biology/box-turnaround.ts';
import type { AutumnBoxLine, AutumnView } from '../../../shared/contract/autumn-pairs.ts';
import type { AutumnPair, AutumnQueen } from '../../../shared/model/autumn-pair.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import type { Column } from '../../components/PlainTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';

/** Which boxes could be united before winter, and how all of them stand; folded until it is asked for. */
export function Autumn() {
  const { autumn: words } = useWords().boxes;
  const [open, setOpen] = useState(false);
  const view = useAnswer(['autumn-pairs'], () => ask.boxes.listAutumnPairs.query(), open).data;
  return (
    <details className="section" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.title}</summary>
      {view ? <Opened view={view} /> : null}
    </details>
  );
}

function Opened({ view }: { view: AutumnView }) {
  const { autumn: words } = useWords().boxes;
  const { boxes, pairs, wanted, notPromised } = view;
  const pairColumns = usePairColumns(view);
  const boxColumns = useBoxColumns(view);
  if (boxes.length === 0) return <p className="soft">{words.empty}</p>;
  return (
    <>
      <p className="soft">{words.lead}</p>
      <ul>
        {words.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      {pairs.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <Section title={words.pairs} level={3}>
          <DataTable caption={words.pairs} rows={pairs} rowKey={(pair) => pair.joined} columns={pairColumns} />
        </Section>
      )}
      <Section title={words.board} level={3}>
        {wanted > 0 && notPromised > 0 ? <p>{words.wanted(wanted, notPromised)}</p> : null}
        <DataTable caption={words.board} rows={boxes} rowKey={(box) => box.id} columns={boxColumns} />
        <p className="soft small">{words.custom(WEAK_STRENGTH, BOX_TURNAROUND.strengthHolds.value)}</p>
      </Section>
    </>
  );
}

const BoxLink = ({ box }: { box: AutumnBoxLine | undefined }) =>
  box ? <a href={`#/boxes?box=${box.id}`}>{box.code}</a> : null;

function usePairColumns({ boxes }: AutumnView): readonly Column<AutumnPair>[] {
  const { autumn: words } = useWords().boxes;
  const { columns } = words;
  const byId = new Map(boxes.map((box) => [box.id, box]));
  return [
    { key: 'box', title: columns.box, head: true, cell: ({ joined }) => <BoxLink box={byId.get(joined)} /> },
    { key: 'keeper', title: columns.keeper, cell: ({ keeper }) => <BoxLink box={byId.get(keeper)} /> },
    { key: 'why', title: columns.why, cell: ({ why }) => why.map(words.whyJoined).join(' ') },
    { key: 'out', title: columns.out, cell: ({ out }) => <QueenOut out={out} box={out && byId.get(out.box)} /> },
    { key: 'first', title: columns.first, cell: ({ first }) => words.first[first] },
  ];
}

function QueenOut({ out, box }: { out: AutumnPair['out']; box: AutumnBoxLine | null | undefined }) {
  const { autumn: words } = useWords().boxes;
  if (!out || !box) return words.outNone;
  const claim = out.claim && out.claim.kind !== 'spare' ? words.claim(out.claim) : '';
  return (
    <>
      {words.outOf(box.code)}
      <QueenLink box={box} />: {[words.whyOut(out.reason), claim].filter(Boolean).join(', ')}
    </>
  );
}

const QueenLink = ({ box }: { box: AutumnBoxLine }) =>
  box.queenId === null ? null : (
    <>
      , <a href={`#/queens/${box.queenId}`}>{box.queenNumber}</a>
    </>
  );

function useBoxColumns({ boxes, pairs, left }: AutumnView): readonly Column<AutumnBoxLine>[] {
  const { autumn: words } = useWords().boxes;
  const { columns } = words;
  const days = useDays();
  const code = new Map(boxes.map((box) => [box.id, box.code]));
  const partner = new Map(
    pairs.flatMap(({ joined, keeper }) => [[joined, keeper] as const, [keeper, joined] as const]),
  );
  const whyLeft = new Map(left.map(({ box, why }) => [box, words.whyLeft(why, days.short)]));
  const what = ({ id }: AutumnBoxLine) => whyLeft.get(id) ?? words.uniteWith(code.get(partner.get(id) ?? '') ?? '');
  return [
    { key: 'box', title: columns.box, head: true, cell: (box) => <BoxLink box={box} /> },
    { key: 'yard', title: columns.yard, cell: (box) => box.yard },
    {
      key: 'strength',
      title: columns.strength,
      cell: ({ strength }) =>
        strength ? (
          words.strengthOf(strength.value, days.short(strength.on))
        ) : (
          <span className="soft nowrap">{words.notTyped}</span>
        ),
    },
    {
      key: 'queen',
      title: columns.queen,
      cell: (box) => (
        <>
          {words.queens[box.queen]}
          {IS_THERE.includes(box.queen) && box.bornIn !== null ? `, ${words.ofYear(box.bornIn)}` : null}
          <QueenLink box={box} />
        </>
      ),
    },
    { key: 'claim', title: columns.claim, cell: ({ claim }) => claim && words.claim(claim) },
    { key: 'what', title: columns.what, cell: what },
  ];
}

const IS_THERE: readonly AutumnQueen[] = ['proved', 'laying', 'drone-layer'];
