import type { QueenDetail } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { FollowUpRow } from '../../components/FollowUpRow.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';

/** Checks that wait, and below them those that were answered. */
export function QueenChecks({ line }: { line: QueenDetail }) {
  const { queens, followUps: words } = useWords();
  const today = useToday();
  const days = useDays();
  const answer = useChange(ask.today.answerFollowUp.mutate);
  const open = line.followUps.filter((one) => one.doneOn === null);
  const done = line.followUps.filter((one) => one.doneOn !== null);
  return (
    <Section title={queens.one.checks}>
      {line.followUps.length === 0 ? <p className="soft">{queens.one.noChecks}</p> : null}
      <ul className="jobs">
        {open.map((one) => (
          <FollowUpRow
            key={one.id}
            followUp={one}
            busy={answer.state.busy}
            onAnswer={(said) => void answer.run({ followUpId: one.id, doneOn: today, answer: said, note: null })}
          />
        ))}
      </ul>
      {done.map((one) => (
        <p key={one.id} className="soft small">
          {words.what[one.what]}{' '}
          {words.done(days.dated(one.doneOn ?? today), one.answer ? words.answered[one.answer] : '')}
        </p>
      ))}
      <ChangeLines {...answer.state} />
    </Section>
  );
}
