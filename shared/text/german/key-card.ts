import type { keyCard as english } from '../english/key-card.ts';
import type { Translation } from '../translation.ts';

export const keyCard: Translation<typeof english> = {
  title: 'Tasten',
  section: 'Tastenkarte',
  explain:
    'Die Buchstaben für das Eintragen am Abend und die Tasten des Programms, auf einem Blatt zum Falten oder Anheften.',
  save: 'Tastenkarte speichern',
  results: 'Was Sie sahen: eine Taste',
  columns: {
    key: 'Taste',
    digit: 'Ziffernblock',
    result: 'Ergebnis',
    meaning: 'Bedeutung',
    does: 'Was sie tut',
  },
  fold: 'hier falten',
  shortcuts: 'Tasten des Programms',
  shift: 'Umschalt mit einer Ergebnistaste gibt der Königin eine Nummer.',
  file: 'ripecell-tasten.pdf',
};
