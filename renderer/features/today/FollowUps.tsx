import { ask } from '../../client/client.ts';
import { useAnswer, useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FollowUpRow } from '../../components/FollowUpRow.tsx';
import { Section } from '../../components/Section.tsx';
import { useFirstWords, useToday } from '../../components/words.ts';

/** Checks of queens and boxes that are due, apart from any batch's timetable. */
export function FollowUps() {
  const { followUps: words } = useFirstWords();
  const today = useToday();
  const list = useAnswer(['follow-ups'], () => ask.today.listFollowUps.query());
  const answer = useChange(ask.today.answerFollowUp.mutate);
  const due = (list.data ?? []).filter((one) => one.dueOn <= today);
  if (due.length === 0) return null;
  return (
    <Section title={words.title}>
      <ul className="jobs">
        {due.map((one) => (
          <FollowUpRow
            key={one.id}
            followUp={one}
            busy={answer.state.busy}
            onAnswer={(said) => void answer.run({ followUpId: one.id, doneOn: today, answer: said, note: null })}
          />
        ))}
      </ul>
      <ChangeLines {...answer.state} />
    </Section>
  );
}
