import type { CSSProperties, ReactNode } from 'react';
import type { BatchLine } from '../../../shared/contract/batches.ts';
import type { PlanWeek, SeasonPlan, WeekLoad } from '../../../shared/contract/season-plan.ts';
import { addDays, dayOfIso } from '../../../shared/kernel/day.ts';
import { weekNumber } from '../../../shared/text/day-text.ts';
import { SeasonStrip, type StripAxis } from '../../charts/SeasonStrip.tsx';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useDays, useWords } from '../../components/words.ts';
import { PlannedName } from './PlannedName.tsx';
import { awayIn, axisOf, dronesIn, openLines } from './plan-layout.ts';

/** A week that begins on another day than Monday has the ISO number of its middle. */
const DAYS_TO_MIDDLE = 3;

/** One column a week: what is wanted and in use, and under it each batch as a strip over the same days. */
export function SeasonWeeks({ plan }: { plan: SeasonPlan }) {
  const { season: words } = useWords();
  const days = useDays();
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const axis = axisOf(plan.weeks);
  if (!axis) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.planPage.weeks}>
      <table className="plain season-weeks" style={{ '--weeks': plan.weeks.length } as CSSProperties}>
        <caption className="visually-hidden">{words.planPage.weeks}</caption>
        <thead>
          <tr>
            <td className="season-name" />
            {plan.weeks.map(({ from }) => (
              <th key={from} scope="col">
                {words.week(weekNumber(addDays(dayOfIso(from), DAYS_TO_MIDDLE)))}
                <br />
                <span className="soft">{days.short(from)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <WeekRows plan={plan} />
          {openLines(batches.data ?? []).map((line) => (
            <BatchStrip key={line.id} line={line} axis={axis} weeks={plan.weeks.length} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function WeekRows({ plan }: { plan: SeasonPlan }) {
  const { planPage: words } = useWords().season;
  const days = useDays();
  const drones = (week: PlanWeek, matureFrom: string): string => {
    const there = dronesIn(week, matureFrom);
    if (there === 'none') return words.noDrones;
    return there === 'all-week' ? words.dronesYes : words.dronesFrom(days.short(there.from));
  };
  const { dronesMatureFrom } = plan;
  return (
    <>
      <WeekRow title={words.rows.wanted} weeks={plan.weeks} cell={(week) => week.wanted || ''} />
      <WeekRow title={words.rows.builders} weeks={plan.weeks} cell={(week) => <Load load={week.builders} />} />
      <WeekRow title={words.rows.boxes} weeks={plan.weeks} cell={(week) => <Load load={week.boxes} />} />
      {plan.awayDays.length > 0 ? (
        <WeekRow
          title={words.rows.away}
          weeks={plan.weeks}
          cell={(week) => {
            const away = awayIn(week, plan.awayDays);
            return away === 0 ? '' : words.awayDays(away);
          }}
        />
      ) : null}
      {dronesMatureFrom === null ? null : (
        <WeekRow title={words.rows.drones} weeks={plan.weeks} cell={(week) => drones(week, dronesMatureFrom)} />
      )}
    </>
  );
}

interface WeekRowProps {
  readonly title: string;
  readonly weeks: readonly PlanWeek[];
  readonly cell: (week: PlanWeek) => ReactNode;
}

function WeekRow({ title, weeks, cell }: WeekRowProps) {
  return (
    <tr>
      <th scope="row">{title}</th>
      {weeks.map((week) => (
        <td key={week.from}>{cell(week)}</td>
      ))}
    </tr>
  );
}

/** How much is in use, and in words how much is missing. */
function Load({ load: { most, of } }: { load: WeekLoad }) {
  const { planPage: words } = useWords().season;
  if (most === 0) return null;
  return (
    <>
      {words.load(most, of)}
      {most > of ? <span className="line-notice">{words.tooFew(most - of)}</span> : null}
    </>
  );
}

interface BatchStripProps {
  readonly line: BatchLine;
  readonly axis: StripAxis;
  readonly weeks: number;
}

function BatchStrip({ line, axis, weeks }: BatchStripProps) {
  const { methods } = useWords();
  return (
    <tr>
      <th scope="row">
        {line.begins ? (
          <PlannedName line={line} begins={line.begins} />
        ) : (
          <a href={`#/batches/${line.id}`}>{line.code}</a>
        )}
        <br />
        <span className="soft small">{line.methodName ?? methods[line.method].name}</span>
      </th>
      <td colSpan={weeks} className="season-strip">
        <SeasonStrip stream={line.stream} axis={axis} />
        <Expected line={line} />
      </td>
    </tr>
  );
}

/** What the batch may bring, by the person's own counts; nothing where too little is known to say. */
function Expected({ line }: { line: BatchLine }) {
  const { planPage: words } = useWords().season;
  const days = useDays();
  const batchId = line.id;
  const answer = useAnswer(['batch-expectation', batchId, line.tally], ({ signal }) =>
    ask.season.getBatchExpectation.query({ batchId }, { signal }),
  );
  const toCome = answer.data?.toCome;
  if (!toCome) return null;
  const { lower, upper } = toCome.proved;
  return <span className="small">{words.expected(lower, upper, days.short(line.stream.to))}</span>;
}
