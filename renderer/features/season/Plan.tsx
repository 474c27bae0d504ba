import type { SeasonPlan } from '../../../shared/contract/season-plan.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { SeasonWeeks } from './SeasonWeeks.tsx';
import { Wishes } from './Wishes.tsx';

/** What is wanted, and what is on: wishes, and all batches that are not over on one axis of weeks. */
export function Plan() {
  const answer = useAnswer(['season-plan'], () => ask.season.getSeasonPlan.query());
  if (!answer.data) return null;
  return (
    <>
      <ToCome plan={answer.data} />
      <Weeks plan={answer.data} />
      <Wishes plan={answer.data} />
    </>
  );
}

/** What is wanted against what is still to come, in one line. */
function ToCome({ plan }: { plan: SeasonPlan }) {
  const { planPage: words } = useWords().season;
  const answer = useAnswer(['queens-to-come'], ({ signal }) => ask.season.getQueensToCome.query(undefined, { signal }));
  if (plan.weeks.length === 0) return null;
  // Its place is kept while it is reckoned, so that nothing below it jumps.
  if (!answer.data) return <p style={{ marginBottom: 18 }}>{'\u00a0'}</p>;
  const { proved, batches, notReckoned } = answer.data;
  const wanted = plan.wishes.reduce((sum, wish) => sum + wish.open, 0);
  return (
    <p style={{ marginBottom: 18 }}>
      <strong>
        {proved
          ? words.toComeLine(wanted, Math.round(proved.mean), proved.lower, proved.upper, batches)
          : words.toComeNone(wanted)}
      </strong>
      {notReckoned.length > 0 ? (
        <>
          {' '}
          {words.without}{' '}
          {notReckoned.map(({ id, code }, index) => (
            <span key={id}>
              {index > 0 ? ', ' : ''}
              <a href={`#/batches/${id}`}>{code}</a>
            </span>
          ))}
          .
        </>
      ) : null}
    </p>
  );
}

function Weeks({ plan }: { plan: SeasonPlan }) {
  const { planPage: words } = useWords().season;
  if (plan.weeks.length === 0) return <p style={{ marginBottom: 18 }}>{words.empty}</p>;
  return (
    <Section title={words.weeks}>
      <SeasonWeeks plan={plan} />
      <div className="soft small" style={{ marginTop: 12 }}>
        <p>{words.loadLine}</p>
        <p>{words.expectedLine}</p>
        {plan.dronesMatureFrom === null ? <p>{words.dronesUnknown}</p> : null}
      </div>
    </Section>
  );
}
