import type { errandWords as english } from '../english/errand.ts';
import type { Translation } from '../translation.ts';

export const errandWords: Translation<typeof english> = {
  title: 'Jemand anderes kontrolliert',
  line: 'Geben Sie einige Kästchen als kleine Datei aus. Wer Ripecell hat, öffnet sie, trägt die Kontrollen ein und gibt die Datei zurück; nur das Gesehene kommt herein, und nie zweimal. Notizen über Völker und Serien bleiben hier.',
  boxes: 'Kästchen zum Ausgeben',
  boxesHint: 'K01-K18, oder K01, K03',
  make: 'Auftrag speichern',
  fileName: (workbook: string, day: string) => `Auftrag für ${workbook} ${day}`,
  saved: (path: string) => `Der Auftrag wurde als ${path} gespeichert.`,
  notSaved: 'Der Auftrag konnte dort nicht gespeichert werden. Wählen Sie einen anderen Ort.',
  downloaded: 'Der Auftrag liegt in den Downloads Ihres Browsers.',
  file: 'Ein Auftrag, der zurückkam',
  from: (from: string, day: string) => `Ausgegeben aus „${from}“ am ${day}.`,
  nothingNew: 'Nichts Neues darin: Alles steht schon hier.',
  columns: { box: 'Kästchen', on: 'Tag', theirs: 'Dort gesehen', mine: 'Hier', stands: 'Was geschieht' },
  standing: {
    new: 'kommt herein',
    same: 'steht schon hier',
    doubtful: 'zwei verschiedene Kontrollen: wählen',
    'no-such-box': 'bleibt draußen: Dieses Kästchen steht nicht in Ihrem Arbeitsbuch',
    'number-taken': 'bleibt draußen: Die Nummer der Königin ist hier vergeben; tragen Sie es von Hand ein',
  },
  theirs: 'deren nehmen',
  keep: 'meine behalten',
  chooseFor: (box: string, day: string) => `Welche Kontrolle von ${box} am ${day} gelten soll`,
  none: 'nicht kontrolliert',
  strength: (n: number) => `Stärke ${n}`,
  food: (n: number) => `Futter ${n}`,
  queen: (number: string) => `Königin ${number}`,
  take: (n: number) => (n === 1 ? '1 Kontrolle übernehmen' : `${n} Kontrollen übernehmen`),
  taken: (added: number, changed: number) =>
    `${added === 1 ? '1 Kontrolle' : `${added} Kontrollen`} übernommen${changed > 0 ? `, ${changed} von Ihren überschrieben` : ''}.`,
};
