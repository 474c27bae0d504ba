import type { menuWords as englishMenu, windowWords as englishWindow } from '../english/menu.ts';
import type { Translation } from '../translation.ts';

export const menuWords: Translation<typeof englishMenu> = {
  file: 'Datei',
  edit: 'Bearbeiten',
  go: 'Gehe',
  batch: 'Serie',
  boxes: 'Kästchen',
  print: 'Drucken',
  view: 'Ansicht',
  help: 'Hilfe',
  'new-workbook': 'Neues Arbeitsbuch …',
  'open-workbook': 'Arbeitsbuch öffnen …',
  'open-demo': 'Vorführung ansehen',
  'close-workbook': 'Arbeitsbuch schließen',
  'new-batch': 'Serie beginnen',
  'go-today': 'Heute',
  'go-batches': 'Serien',
  'go-hives': 'Völker',
  'go-boxes': 'Begattungskästchen',
  'go-queens': 'Königinnen',
  'go-season': 'Saison',
  'go-print': 'Drucken',
  'go-class': 'Kurs',
  'go-settings': 'Einstellungen',
  'go-history': 'Verlauf',
  'go-to': 'Gehe zu …',
  back: 'Zurück',
  forward: 'Vor',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  'type-looks': 'Kontrollen eintragen',
  'place-cells': 'Zellen in Kästchen setzen',
  'report-slip': 'Eintragen, was wirklich zu sehen war',
  'print-labels': 'Etiketten',
  'print-view': 'Diese Ansicht drucken …',
  helpEntry: 'Hilfe und Wörter',
  aboutEntry: 'Über Ripecell',
};

export const windowWords: Translation<typeof englishWindow> = {
  title: 'Ripecell',
  pageKeepsFailing:
    'Die Seite ist mehrmals nacheinander gescheitert. Alles Gespeicherte steht im Arbeitsbuch. Schließen Sie das Programm und starten Sie es neu.',
};
