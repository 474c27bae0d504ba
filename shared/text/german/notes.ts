import type { notes as english } from '../english/notes.ts';
import type { Translation } from '../translation.ts';

export const notes: Translation<typeof english> = {
  title: 'Notizen durchsuchen',
  word: 'Gesuchte Wörter',
  hint: 'Jedes Wort muss in der Notiz stehen, in beliebiger Reihenfolge',
  searchFor: (text: string) => `„${text}“ in den Notizen`,
  found: (n: number) => (n === 0 ? 'Mit diesen Wörtern wurde nichts notiert.' : n === 1 ? '1 Notiz' : `${n} Notizen`),
  shown: (shown: number, n: number) => `Die neuesten ${shown} von ${n}. Ein weiteres Wort findet weniger.`,
  ask: 'Geben Sie ein Wort ein. Durchsucht werden Notizen von Serien, Kästchen, Völkern und Königinnen, Lehren, Kontrollen, Behandlungen und was von Königinnen erzählt wurde.',
  noDay: '',
  kinds: {
    batch: 'Serie',
    lesson: 'Lehre',
    step: 'Schritt erledigt',
    'moved-step': 'Tag verlegt',
    sighting: 'gesehen',
    box: 'Kästchen',
    'box-look': 'Kontrolle des Kästchens',
    hive: 'Volk',
    'hive-look': 'Kontrolle des Volks',
    yard: 'Stand',
    queen: 'Königin',
    'queen-move': 'wohin sie ging',
    feedback: 'von ihr erzählt',
    check: 'Prüfung',
    score: 'Bewertung',
    test: 'Test',
    treatment: 'Behandlung',
    'hive-move': 'versetzt',
  },
  columns: { about: 'Über', day: 'Tag', kind: 'Was', text: 'Notiz' },
};
