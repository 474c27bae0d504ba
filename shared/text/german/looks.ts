import type { lookWords as english } from '../english/looks.ts';
import type { Translation } from '../translation.ts';

export const lookWords: Translation<typeof english> = {
  laying: { name: 'in Eilage', line: 'Eier oder junge Brut einer neuen Königin.' },
  proved: { name: 'erwiesen', line: 'Verdeckelte Arbeiterinnenbrut: Sie ist begattet und legt gut.' },
  virgin: { name: 'unbegattet', line: 'Eine Königin war zu sehen, ohne Eilage und noch schlank.' },
  cell: { name: 'Zelle zu', line: 'Die Zelle ist noch geschlossen.' },
  none: { name: 'weisellos', line: 'Keine Königin und keine Eier.' },
  'drone-layer': { name: 'drohnenbrütig', line: 'Drohnenbrut in Arbeiterinnenzellen.' },
  gone: { name: 'Kästchen leer', line: 'Die Bienen sind ausgezogen, oder das Kästchen wurde ausgeraubt.' },
  queen: {
    name: 'Königin, keine Eier',
    line: 'Eine Königin war zu sehen, die begattet sein könnte; noch keine Eier.',
  },
  out: { name: 'geschlüpft', line: 'Die Zelle ist an der Spitze offen, der Deckel hängt: Sie ist heraus.' },
  'cell-failed': { name: 'Zelle verloren', line: 'Die Zelle ist tot oder an der Seite ausgebissen.' },
  'not-looked': { name: 'nicht kontrolliert', line: 'Nicht geöffnet. Zählt weder dafür noch dagegen.' },
};
