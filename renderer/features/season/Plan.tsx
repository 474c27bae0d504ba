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
      <Weeks plan={answer.data} />
      <Wishes plan={answer.data} />
    </>
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
