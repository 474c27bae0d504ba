import { lazy, Suspense, useState } from 'react';
import {
  COMPARE_FACTORS,
  type CompareFactor,
  type CompareRow,
  RATE_STAGES,
  type RateStage,
  type SeasonComparison,
} from '../../../shared/contract/season.ts';
import type { BoxType, Method } from '../../../shared/model/method.ts';
import { monthName } from '../../../shared/text/day-text.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import { compareDots } from '../../charts/compare-layout.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { Figure } from '../../components/Figure.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { FindingText } from './FindingText.tsx';
import { useWeighed } from './weighed.ts';

const CompareChart = lazy(() => import('../../charts/CompareChart.tsx').then((m) => ({ default: m.CompareChart })));

/** What did better, per method, builder, breeder, season, month or box type: figures first, picture below. */
export function Compare() {
  const { season: words } = useWords();
  const [factor, setFactor] = useState<CompareFactor>('method');
  const [season, setSeason] = useState<number | null>(null);
  const [stage, setStage] = useState<RateStage>('take');
  const [leaveOutPractice, setLeaveOut] = useState(true);
  const [chosen, setChosen] = useState<string | null>(null);
  const answer = useAnswer(['compare', factor, season, leaveOutPractice], () =>
    ask.season.compareSeason.query({ factor, season, leaveOutPractice }),
  );
  const comparison = answer.data;
  return (
    <>
      <div className="row" style={{ marginBottom: 22 }}>
        <ChoiceField
          label={words.by}
          value={factor}
          choices={COMPARE_FACTORS.map((value) => ({ value, text: words.factors[value] }))}
          onChange={setFactor}
        />
        <ChoiceField
          label={words.in}
          value={season === null ? '' : String(season)}
          choices={[
            { value: '', text: words.allSeasons },
            ...(comparison?.seasons ?? []).map((year) => ({ value: String(year), text: String(year) })),
          ]}
          onChange={(value) => setSeason(value === '' ? null : Number(value))}
        />
        <ChoiceField
          label={words.stage}
          value={stage}
          choices={RATE_STAGES.map((value) => ({
            value,
            text: `${words.stages[value].name}: ${words.stages[value].line}`,
          }))}
          onChange={setStage}
        />
        <label className="check" style={{ minHeight: 40 }}>
          <input type="checkbox" checked={leaveOutPractice} onChange={(event) => setLeaveOut(event.target.checked)} />
          {words.leaveOut}
        </label>
      </div>
      {comparison && comparison.rows.length === 0 ? <p>{words.empty}</p> : null}
      {comparison && comparison.rows.length > 0 ? (
        <Comparison
          comparison={comparison}
          asked={{ factor, season, leaveOutPractice }}
          stage={stage}
          chosen={chosen}
          onChoose={setChosen}
        />
      ) : null}
    </>
  );
}

interface Asked {
  readonly factor: CompareFactor;
  readonly season: number | null;
  readonly leaveOutPractice: boolean;
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
  const nameOf = useGroupName(comparison.factor);
  const weighed = useWeighed({ ...asked, stage });
  const dots = compareDots(comparison.rows, stage, nameOf, weighed?.groups);
  const row = comparison.rows.find((one) => one.groupId === chosen);
  const title = words.chart(words.stages[stage].name, words.factors[comparison.factor]);
  return (
    <>
      <FigureTable comparison={comparison} nameOf={nameOf} onChoose={onChoose} />
      {row ? <BatchesBehind row={row} name={nameOf(row)} /> : null}
      <Section title={title}>
        <figure>
          {dots.length > 0 ? (
            <Suspense fallback={<p role="status">…</p>}>
              <CompareChart dots={dots} title={title} onChoose={onChoose} />
            </Suspense>
          ) : null}
          <figcaption>
            <FindingText dots={dots} stage={stage} weighed={weighed} /> {words.ticks} {words.caveat}{' '}
            {comparison.runningLeftOut > 0 ? `${words.running(comparison.runningLeftOut)} ` : ''}
            {words.assumed}
          </figcaption>
        </figure>
      </Section>
    </>
  );
}

/** Groups come as keys; the page knows their words. */
function useGroupName(factor: CompareFactor): (row: CompareRow) => string {
  const words = useWords();
  return (row) => {
    if (row.groupId === 'unknown') return words.season.unknown;
    if (factor === 'method') return words.methods[row.label as Method]?.name ?? row.label;
    if (factor === 'boxType') return words.boxTypes[row.label as BoxType]?.name ?? row.label;
    return factor === 'month' ? monthName(Number(row.label)) : row.label;
  };
}

function FigureTable({
  comparison,
  nameOf,
  onChoose,
}: {
  comparison: SeasonComparison;
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
          { key: 'batches', title: words.columns.batches, numeric: true, cell: (row) => row.batchIds.length },
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
    </Section>
  );
}

function BatchesBehind({ row, name }: { row: CompareRow; name: string }) {
  const { season: words } = useWords();
  const codes = new Map(row.batchPoints.map((point) => [point.batchId, point.batch]));
  return (
    <Section title={`${words.behind}: ${name}`} level={3}>
      <p>
        {row.batchIds.map((batchId, index) => (
          <span key={batchId}>
            {index > 0 ? ', ' : ''}
            <a href={`#/batches/${batchId}`}>{codes.get(batchId) ?? '…'}</a>
          </span>
        ))}
      </p>
    </Section>
  );
}
