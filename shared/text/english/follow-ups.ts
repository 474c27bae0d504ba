import type { FollowUpKind } from '../../model/follow-up.ts';
import type { FollowUpAnswer } from '../../model/follow-up-answer.ts';

type Answers = Readonly<Record<FollowUpAnswer, string>>;

/** Checks that follow from one thing done: their names, and the answers to each. */
export const followUps = {
  title: 'Queens and boxes to check',
  none: 'No check is due.',
  what: {
    'check-release': 'Is she out of her cage?',
    'check-eggs': 'Look for eggs',
    'check-queen': 'Is she still the queen?',
    'look-again': 'Look again',
  } satisfies Record<FollowUpKind, string>,
  answers: {
    'check-release': { well: 'She is out', 'not-yet': 'Not yet', gone: 'Dead or gone' },
    'check-eggs': { well: 'Eggs', 'not-yet': 'None yet', gone: 'She is gone' },
    'check-queen': { well: 'She is', 'not-yet': 'Not seen', gone: 'Another one, or none' },
    'look-again': { well: 'Looked', 'not-yet': 'Later', gone: 'Nothing there' },
  } satisfies Record<FollowUpKind, Answers>,
  answered: { well: 'as hoped', 'not-yet': 'not yet', gone: 'gone' } satisfies Answers,
  due: (day: string, latest: string) => (day === latest ? day : `${day} to ${latest}`),
  late: (latest: string) => `was due by ${latest}`,
  done: (day: string, answer: string) => `${day}: ${answer}`,
  broughtIn: (queen: string) => `Queen ${queen} was just brought in`,
  typeLook: 'Type the look',
  read: (answer: string, what: string, who: string) => `${answer}: ${what} ${who}`,
} as const;
