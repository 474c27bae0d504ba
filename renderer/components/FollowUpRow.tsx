import { Button } from '@mui/material';
import type { FollowUpLine } from '../../shared/contract/follow-ups.ts';
import { FOLLOW_UP_ANSWERS, type FollowUpAnswer } from '../../shared/model/follow-up-answer.ts';
import { goTo } from './routes.ts';
import { useDays, useFirstWords } from './words.ts';

interface FollowUpRowProps {
  readonly followUp: FollowUpLine;
  readonly busy: boolean;
  readonly onAnswer: (answer: FollowUpAnswer) => void;
}

/**
 * One check: where, what, when, and from its day on a button for each answer. A look into a box is typed in the grid.
 */
export function FollowUpRow({ followUp, busy, onAnswer }: FollowUpRowProps) {
  const { followUps: words } = useFirstWords();
  const days = useDays();
  const { what, queen, box, hive, yard, dueOn, latestOn, late } = followUp;
  const open = dueOn <= days.today;
  const who = queen?.number ?? box?.code ?? '';
  const when = late ? words.late(days.short(latestOn)) : words.due(days.short(dueOn), days.short(latestOn));
  return (
    <li>
      <div className="where">
        {hive ? (
          <a href={`#/hives/${hive.id}`}>{hive.code}</a>
        ) : box ? (
          <a href={`#/boxes?box=${box.id}`}>{box.code}</a>
        ) : null}
      </div>
      <div className="what">
        <strong>{words.what[what]}</strong>{' '}
        {queen ? (
          <a className="nowrap" href={`#/queens/${queen.id}`}>
            {queen.number}
          </a>
        ) : null}
        <div className={late ? 'small notice' : 'soft small'}>{[yard, when].filter(Boolean).join(' · ')}</div>
        {open ? (
          <div className="acts">
            {what === 'look-again' ? (
              <Button
                variant="outlined"
                onClick={() => goTo('/boxes/looks')}
                aria-label={words.read(words.typeLook, '', who)}
              >
                {words.typeLook}
              </Button>
            ) : (
              FOLLOW_UP_ANSWERS.map((answer) => (
                <Button
                  key={answer}
                  variant={answer === 'well' ? 'outlined' : 'text'}
                  disabled={busy}
                  aria-label={words.read(words.answers[what][answer], words.what[what], who)}
                  onClick={() => onAnswer(answer)}
                >
                  {words.answers[what][answer]}
                </Button>
              ))
            )}
          </div>
        ) : null}
      </div>
    </li>
  );
}
