import type { followUps as english } from '../english/follow-ups.ts';
import type { Translation } from '../translation.ts';

export const followUps: Translation<typeof english> = {
  title: 'Königinnen und Kästchen zu prüfen',
  none: 'Keine Prüfung ist fällig.',
  what: {
    'check-release': 'Ist sie aus dem Käfig?',
    'check-eggs': 'Nach Eiern sehen',
    'check-queen': 'Ist sie noch die Königin?',
    'look-again': 'Noch einmal kontrollieren',
  },
  answers: {
    'check-release': { well: 'Sie ist heraus', 'not-yet': 'Noch nicht', gone: 'Tot oder weg' },
    'check-eggs': { well: 'Eier', 'not-yet': 'Noch keine', gone: 'Sie ist weg' },
    'check-queen': { well: 'Sie ist es', 'not-yet': 'Nicht gesehen', gone: 'Eine andere, oder keine' },
    'look-again': { well: 'Kontrolliert', 'not-yet': 'Später', gone: 'Nichts darin' },
  },
  answered: { well: 'wie erhofft', 'not-yet': 'noch nicht', gone: 'weg' },
  due: (day: string, latest: string) => (day === latest ? day : `${day} bis ${latest}`),
  late: (latest: string) => `war fällig bis ${latest}`,
  done: (day: string, answer: string) => `${day}: ${answer}`,
  broughtIn: (queen: string) => `Königin ${queen} wurde eben zugesetzt`,
  typeLook: 'Die Kontrolle eintragen',
  read: (answer: string, what: string, who: string) => `${answer}: ${what} ${who}`,
};
