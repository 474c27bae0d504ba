import { addDays, dayOfIso } from '../../../shared/kernel/day.ts';
import { weekNumber } from '../../../shared/text/day-text.ts';
import { SeasonStrip } from '../../charts/SeasonStrip.tsx';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { useDays, useWords } from '../../components/words.ts';
import { planAxis } from './plan-layout.ts';

/** A week that begins on another day than Monday has the ISO number of its middle. */
const DAYS_TO_MIDDLE = 3;

/** Running and planned batches on one axis of weeks. */
export function Plan() {
  const { season: words, methods } = useWords();
  const days = useDays();
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const axis = planAxis(batches.data ?? [], days.weekStart);
  if (!axis) return <p>{batches.data ? words.planEmpty : ''}</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that may scroll must be reachable by keyboard
    <div role="group" className="table-scroll" tabIndex={0} aria-label={words.plan}>
      <div className="plan-axis">
        <div
          style={{
            display: 'grid',
            gridTemplateColumns: `150px repeat(${axis.weeks.length}, 1fr)`,
            borderBottom: '1px solid var(--rule)',
          }}
        >
          <span />
          {axis.weeks.map((from) => (
            <span
              key={from}
              className="small"
              style={{ borderInlineStart: '1px solid var(--faint-rule)', paddingInlineStart: 6 }}
            >
              {words.week(weekNumber(addDays(dayOfIso(from), DAYS_TO_MIDDLE)))}
              <br />
              <span className="soft">{days.short(from)}</span>
            </span>
          ))}
        </div>
        <ul style={{ listStyle: 'none', padding: 0, margin: 0 }}>
          {axis.lines.map((line) => (
            <li
              key={line.id}
              style={{
                display: 'grid',
                gridTemplateColumns: '150px minmax(0, 1fr)',
                alignItems: 'center',
                borderBottom: '1px solid var(--faint-rule)',
                minHeight: 56,
              }}
            >
              <span>
                <a href={`#/batches/${line.id}`}>{line.code}</a>
                <br />
                <span className="soft small">{line.methodName ?? methods[line.method].name}</span>
              </span>
              <SeasonStrip stream={line.stream} axis={axis} />
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
