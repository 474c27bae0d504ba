import type { feeding as english } from '../english/feeding.ts';
import type { Translation } from '../translation.ts';

export const feeding: Translation<typeof english> = {
  open: 'Fütterung eintragen',
  title: 'Fütterung eintragen',
  feeds: {
    'syrup-1-1': 'Zuckerwasser 1:1',
    'syrup-2-1': 'Zuckerwasser 2:1',
    fondant: 'Futterteig',
    pollen: 'Pollen',
    'protein-patty': 'Eiweißteig',
    other: 'etwas anderes',
  },
  places: 'Gefüttert',
  placesOf: { hives: 'Völker', boxes: 'Begattungskästchen' },
  yard: 'Stand',
  allYards: 'jeder Stand',
  day: 'Tag des Zettels',
  on: 'Tag',
  feed: 'Futter',
  ownFeed: 'Was es ist',
  nameFirst: 'Sagen Sie, was es ist, und geben Sie dann ein, wie viel jedes bekam.',
  nobody: 'Hier ist nichts zu füttern.',
  columns: {
    place: 'Volk oder Kästchen',
    where: 'Wo',
    last: 'Zuletzt gefüttert',
    amount: 'Wie viel',
    note: 'Notiz',
  },
  amountIn: (unit: string) => `Wie viel, ${unit}`,
  never: 'nie',
  unknownAmount: 'Menge nicht bekannt',
  handsOff: (code: string, day: string) => `${code}: die Brut in Ruhe lassen bis ${day}`,
  progress: (done: number, all: number) => `${done} von ${all}`,
  keys: 'Eingabe geht zur nächsten Zeile, Tab zur Notiz, Pfeil auf berichtigt, Strg+Eingabe ist fertig. Andere Einheiten gehen auch: 500 g, 1,5 L. Ein Fragezeichen: gefüttert, Menge nicht bekannt. Eine leere Zeile: nicht gefüttert.',
  summary: (n: number) => `${n === 1 ? '1 Fütterung' : `${n} Fütterungen`} gespeichert.`,
  several: 'Dasselbe für mehrere auf einmal',
  codes: 'Völker und Kästchen',
  codesHint: 'etwa K01-K18, H12',
  giveAll: 'Für alle aufschreiben',
  caution:
    'Füttern Sie nur Zucker, im Stock und gegen Abend, und verschütten Sie nichts: Der Geruch lockt Räuber an. Nehmen Sie Honig für Menschen vorher ab. Honig und Pollen von anderswo können Krankheiten tragen. Für Futter gelten verschiedene Vorschriften; halten Sie sich an Ihre.',
  usual: {
    'syrup-1-1': (from: string, to: string) =>
      `Ein Pflegevolk bekommt gewöhnlich ${from} bis ${to} am Tag, von 3 Tagen vor den Larven bis 5 Tage danach (üblich).`,
    fondant: (from: string, to: string) =>
      `Ein Mini-Begattungskästchen bekommt beim Füllen gewöhnlich ${from} bis ${to} (üblich).`,
    'protein-patty': (from: string, to: string) =>
      `Ein Pflegevolk bekommt gewöhnlich ${from} bis ${to} für 4 bis 5 Tage (üblich).`,
  },
  list: 'Fütterung',
  none: 'Keine Fütterung aufgeschrieben.',
  older: (n: number) => (n === 1 ? '1 ältere' : `${n} ältere`),
  add: 'Fütterung aufschreiben',
  remove: 'Herausnehmen',
  removeOf: (day: string, feed: string) => `Herausnehmen: ${day}, ${feed}`,
};
