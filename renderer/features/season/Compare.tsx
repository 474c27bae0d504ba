import { lazy, Suspense, useState } from 'react';
import {
  type ComparedBatch,
  type CompareRow,
  type GroupPart,
  RATE_STAGES,
  type RateStage,
  type SeasonComparison,
} from '../../../shared/contract/season.ts';
import type { BoxType, Method } from '../../../shared/model/method.ts';
import { compareDots } from '../../charts/compare-layout.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { DataTable } from '../../components/DataTable.tsx';
import { Figure } from '../../components/Figure.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { CompareControls, FIRST_ASKED } from './CompareControls.tsx';
import { FindingText } from './FindingText.tsx';
import { Losses } from './Losses.tsx';
import { SaveFigures } from './SaveFigures.tsx';
import { type Asked, useBatchesBehind, useWeighed } from './weighed.ts';

const CompareChart = lazy(() => import('../../charts/CompareChart.tsx').then((m) => ({ default: m.CompareChart })));

/** What did better, per method, builder, breeder, season, month or box type: figures first, picture below. */
export function Compare() {
  const { season: words } = useWords();
  const [asked, setAsked] = useState<Asked>(FIRST_ASKED);
  const [stage, setStage] = useState<RateStage>('take');
  const [chosen, setChosen] = useState<string | null>(null);
  const { allowingFor: _beside, ahead: _later, ...plain } = asked;
  const answer = useAnswer(['compare', plain], () => ask.season.compareSeason.query(plain));
  const comparison = answer.data;
  return (
    <>
      <CompareControls
        asked={asked}
        onAsk={setAsked}
        stage={stage}
        onStage={setStage}
        seasons={comparison?.seasons ?? []}
      />
      {comparison && comparison.rows.length === 0 ? <p>{words.empty}</p> : null}
      {comparison && comparison.rows.length > 0 ? (
        <Comparison comparison={comparison} asked={asked} stage={stage} chosen={chosen} onChoose={setChosen} />
      ) : null}
    </>
  );
}

interface ComparisonProps {
  readonly comparison: SeasonComparison;
  readonly asked: Asked;
  readonly stage: RateStage;
  readonly chosen: string | null;
  readonly onChoose: (groupId: string | null) => void;
}

function Comparison({ comparison, asked, stage, chosen, onChoose }: ComparisonProps) {
  const { season: words } = useWords();
  const nameOf = useGroupName();
  const weighed = useWeighed({ ...asked, stage });
  const behind = useBatchesBehind(asked);
  const dots = compareDots(comparison.rows, stage, nameOf, weighed?.groups, behind);
  const row = comparison.rows.find((one) => one.groupId === chosen);
  const title = words.chart(words.stages[stage].name, words.factors[comparison.factor]);
  return (
    <>
      <FigureTable comparison={comparison} asked={asked} nameOf={nameOf} onChoose={onChoose} />
      {row ? <BatchesBehind batches={behind.filter(({ groupId }) => groupId === chosen)} name={nameOf(row)} /> : null}
      <Losses asked={asked} />
      <Section title={title}>
        <figure>
          {dots.length > 0 ? (
            <Suspense fallback={<p role="status">…</p>}>
              <CompareChart dots={dots} title={title} onChoose={onChoose} />
            </Suspense>
          ) : null}
          <figcaption>
            <FindingText dots={dots} stage={stage} asked={asked} weighed={weighed} /> {words.ticks} {words.caveat}{' '}
            {comparison.runningLeftOut > 0 ? `${words.running(comparison.runningLeftOut)} ` : ''}
            {words.assumed}
          </figcaption>
        </figure>
      </Section>
    </>
  );
}

/** Groups come as keys; the page knows their words. */
function useGroupName(): (row: CompareRow) => string {
  const days = useDays();
  const words = useWords();
  const nameOfPart = ({ factor, id, label }: GroupPart) => {
    if (id === 'unknown') return words.season.unknown;
    if (factor === 'method') return words.methods[label as Method]?.name ?? label;
    if (factor === 'boxType') return words.boxTypes[label as BoxType]?.name ?? label;
    return factor === 'month' ? days.month(Number(label)) : label;
  };
  return (row) => row.parts.map(nameOfPart).join(', ');
}

function FigureTable({
  comparison,
  asked,
  nameOf,
  onChoose,
}: {
  comparison: SeasonComparison;
  asked: Asked;
  nameOf: (row: CompareRow) => string;
  onChoose: (groupId: string) => void;
}) {
  const { season: words } = useWords();
  return (
    <Section title={words.figuresBy(words.factors[comparison.factor])}>
      <DataTable
        caption={words.chart(words.compare, words.factors[comparison.factor])}
        rows={comparison.rows}
        rowKey={(row) => row.groupId}
        columns={[
          {
            key: 'group',
            title: words.factors[comparison.factor],
            head: true,
            cell: (row) => (
              <button type="button" className="as-text" onClick={() => onChoose(row.groupId)}>
                {nameOf(row)}
              </button>
            ),
          },
          { key: 'batches', title: words.columns.batches, numeric: true, cell: (row) => row.batches },
          ...RATE_STAGES.map((stage) => ({
            key: stage,
            title: (
              <>
                {words.stages[stage].name}
                <br />
                <span style={{ fontWeight: 400 }}>{words.stages[stage].line}</span>
              </>
            ),
            cell: (row: CompareRow) => <Figure figure={row.rates[stage]} />,
          })),
        ]}
      />
      <p className="soft small" style={{ marginTop: 8 }}>
        {words.tableNote}
      </p>
      <SaveFigures asked={asked} />
    </Section>
  );
}

function BatchesBehind({ batches, name }: { batches: readonly ComparedBatch[]; name: string }) {
  const { season: words } = useWords();
  return (
    <Section title={`${words.behind}: ${name}`} level={3}>
      <p>
        {batches.map(({ batchId, batch }, index) => (
          <span key={batchId}>
            {index > 0 ? ', ' : ''}
            <a href={`#/batches/${batchId}`}>{batch}</a>
          </span>
        ))}
      </p>
    </Section>
  );
}
