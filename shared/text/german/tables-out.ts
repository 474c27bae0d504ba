import type {
  dictionaryWords as EnglishDictionary,
  tableTitles as EnglishTitles,
  tablesOut as english,
} from '../english/tables-out.ts';
import type { Translation } from '../translation.ts';

export const tableTitles: Translation<typeof EnglishTitles> = {
  hives: 'Völker',
  batches: 'Serien',
  counts: 'Zählungen',
  boxes: 'Begattungskästchen',
  placements: 'Zellen in Kästchen',
  looks: 'Kontrollen der Kästchen',
  queens: 'Königinnen',
  tallies: 'Was aus jeder Serie wurde',
  weather: 'Flugwetter',
  feedings: 'Fütterung',
  wishes: 'Gewünschte Königinnen',
  treatments: 'Behandlungen',
  'queen-promises': 'Versprochene Königinnen',
  'queen-feedback': 'Was von Königinnen erzählt wurde',
  'hive-looks': 'Kontrollen der Völker',
  'hive-moves': 'Versetzte Völker',
  'hive-scores': 'Bewertungen der Völker',
  'hive-tests': 'Tests der Völker',
  'steps-done': 'Erledigte Schritte',
  'steps-dropped': 'Schritte, die entfallen',
  losses: 'Gründe für Verluste',
  sightings: 'Was zu sehen war',
  'queen-moves': 'Wohin Königinnen gingen',
};

export const dictionaryWords: Translation<typeof EnglishDictionary> = {
  title: 'Lies mich',
  columns: {
    table: 'Tabelle, zu der die Spalte gehört.',
    column: 'Überschrift der Spalte.',
    kind: 'Art ihrer Werte; Tage sind 2026-05-14 geschrieben.',
    unit: 'Einheit.',
    choices: 'Die Wörter, die sie enthalten kann, wenn sie eines aus einer Liste enthält.',
    meaning: 'Was sie sagt. Eine leere Zelle heißt: nicht bekannt.',
  },
};

export const tablesOut: Translation<typeof english> = {
  title: 'Tabellen für Tabellenprogramme und andere Programme',
  explain: 'Eine Kopie dessen, was im Arbeitsbuch steht. Im Arbeitsbuch ändert sich nichts.',
  format: 'Als',
  formats: {
    xlsx: 'Tabellendatei (XLSX), ein Blatt je Tabelle',
    csv: 'Texttabellen (CSV)',
    json: 'Alles (JSON), zum Wiederübernehmen',
    schema: 'Beschreibung dieser JSON-Datei (JSON Schema)',
  },
  table: 'Tabelle',
  all: 'Alle Tabellen, in einer ZIP-Datei',
  dictionary: 'Was die Spalten bedeuten',
  separator: 'Zwischen den Spalten',
  separators: { comma: 'Komma', semicolon: 'Strichpunkt' },
  separatorHint: 'Tabellenprogramme in einer Sprache mit Dezimalkomma erwarten einen Strichpunkt.',
  mark: 'Für ein Tabellenprogramm (Buchstaben wie ø und ž werden richtig gelesen)',
  save: 'Datei speichern',
  rows: (rows: number) => (rows === 1 ? '1 Zeile.' : `${rows} Zeilen.`),
  fileName: (what: string, day: string) => `ripecell-${what}-${day}`,
  saved: (path: string) => `Gespeichert als ${path}.`,
  notSaved: 'Die Datei konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.',
  downloaded: 'Die Datei liegt in Ihren Downloads.',
};
