import type {
  IMPORT_FIELD_WORDS as EnglishFields,
  PROBLEM as EnglishProblem,
  FILE_TROUBLE as EnglishTrouble,
  WHOLE_PROBLEM as EnglishWhole,
  tablesIn as english,
} from '../english/tables-in.ts';
import type { Translation } from '../translation.ts';

const rows = (n: number) => (n === 1 ? '1 Zeile' : `${n} Zeilen`);

export const IMPORT_FIELD_WORDS: Translation<typeof EnglishFields> = {
  code: 'Kürzel',
  name: 'Name',
  yard: 'Stand',
  place: 'Platz',
  motherLine: 'Mutterlinie',
  note: 'Notiz',
  row: 'Reihe oder Merkzeichen',
  walkOrder: 'Reihenfolge im Rundgang',
  boxType: 'Bauart des Kästchens',
  number: 'Nummer',
  bornIn: 'Geboren',
  breeder: 'Zuchtvolk',
  markedOn: 'Gezeichnet am',
  firstEggsOn: 'Erste Eier am',
  provedOn: 'Verdeckelte Brut am',
  box: 'Im Kästchen',
  hive: 'Im Volk',
  goneTo: 'Gegangen an',
  larvaeGivenOn: 'Larven gegeben am',
  method: 'Verfahren',
  builder: 'Pflegevolk',
  given: 'Gegeben',
  taken: 'Angenommen',
  removed: 'Weggenommen',
  sealed: 'Verdeckelt',
  countedOn: 'Gezählt am',
  day: 'Tag',
  maxCelsius: 'Höchste, °C',
  windKmh: 'Wind, km/h',
  rain: 'Regen zur Flugzeit',
  flyingHours: 'Gute Flugstunden',
};

export const FILE_TROUBLE: Translation<typeof EnglishTrouble> = {
  'too-large': ({ limit = 0 }) =>
    `Datei: Sie ist größer als ${limit / 1_000_000} MB. Speichern Sie nur die nötigen Zeilen als neue Datei, und wählen Sie diese.`,
  'zip-too-large': () =>
    'Datei: Ausgepackt wäre sie viel zu groß. Öffnen Sie sie in dem Programm, aus dem sie kommt, und speichern Sie sie neu als CSV.',
  'zip-broken': () =>
    'Datei: Sie ist beschädigt. Speichern Sie sie in dem Programm, aus dem sie kommt, neu, und wählen Sie diese.',
  'not-a-table': () =>
    'Datei: Das ist keine Tabelle. Wählen Sie eine Datei, die auf .csv oder .xlsx endet, oder speichern Sie die Tabelle so.',
  empty: () =>
    'Datei: Unter den Überschriften stehen keine Zeilen. Wählen Sie eine Datei, deren erste Zeile die Überschriften enthält.',
  'too-many-rows': ({ limit = 0 }) => `Datei: Sie hat mehr als ${limit} Zeilen. Teilen Sie sie in kleinere Dateien.`,
  'too-many-columns': ({ limit = 0 }) =>
    `Datei: Sie hat mehr als ${limit} Spalten. Speichern Sie eine Tabelle mit nur den nötigen Spalten.`,
  'too-many-cells': ({ limit = 0 }) =>
    `Datei: Sie hat mehr als ${limit} Zellen. Speichern Sie eine Tabelle mit nur den nötigen Zeilen und Spalten.`,
  'cell-too-long': ({ row = 0, limit = 0 }) =>
    `Zeile ${row}: Eine Zelle enthält mehr als ${limit} Buchstaben. Kürzen Sie sie.`,
  'quote-left-open': ({ row = 0 }) =>
    `Zeile ${row}: Ein Anführungszeichen beginnt einen Text und wird nie geschlossen. Schließen Sie es, oder nehmen Sie es weg.`,
  'not-json': () =>
    'Datei: Sie ist nicht als JSON zu lesen. Wählen Sie die Datei, die hier als „Alles“ gespeichert wurde.',
  'too-deep': () => 'Datei: Das ist keine Datei, die hier als „Alles“ gespeichert wurde. Wählen Sie jene.',
  'not-our-file': () => 'Datei: Das ist keine Datei, die hier als „Alles“ gespeichert wurde. Wählen Sie jene.',
  contradicts: () =>
    'Datei: Ihre Zeilen widersprechen einander oder dem Arbeitsbuch, darum wurde nichts übernommen. Übernehmen Sie sie in ein neues Arbeitsbuch.',
  'newer-form': () =>
    'Datei: Sie wurde mit einer neueren Version des Programms gemacht. Besorgen Sie das neuere Programm, und übernehmen Sie sie dann.',
};

export const PROBLEM: Translation<typeof EnglishProblem> = {
  empty: (_, field) => `${field} ist leer. Füllen Sie es aus.`,
  'not-a-day': ({ text }, field) =>
    `${field}: „${text}“ ist in dieser Reihenfolge kein Tag. Schreiben Sie 2024-05-14, oder wählen Sie eine andere Reihenfolge der Tage.`,
  'not-a-number': ({ text, other }, field) =>
    `${field}: „${text}“ ist keine ganze Zahl${other === null ? '' : ` bis ${other}`}. Berichtigen Sie es.`,
  'not-a-figure': ({ text, other }, field) =>
    `${field}: „${text}“ ist keine Zahl, oder keine, die ein Tag bringen kann${other === null ? '' : ` (höchstens ${other})`}. Berichtigen Sie es, oder lassen Sie es leer.`,
  'not-a-choice': ({ text }, field) =>
    `${field}: „${text}“ ist keines der Wörter dafür. Berichtigen Sie es, oder lassen Sie es leer.`,
  'not-a-code': ({ text }, field) =>
    `${field}: „${text}“ ist kein Kürzel. Nehmen Sie bis zu 12 Buchstaben und Ziffern ohne Leerzeichen, etwa K01.`,
  'too-long': ({ other }, field) => `${field} ist länger als ${other} Buchstaben. Kürzen Sie es.`,
  'letters-lost': ({ text }, field) =>
    `${field}: In „${text}“ gingen Buchstaben verloren, als die Datei gespeichert wurde. Speichern Sie sie neu als „CSV UTF-8“, oder berichtigen Sie sie.`,
  twice: ({ text, other }, field) => `${field}: „${text}“ steht schon in Zeile ${other}. Behalten Sie eine von beiden.`,
  'there-already': ({ text }, field) =>
    `${field}: „${text}“ steht schon im Arbeitsbuch. Lassen Sie die Zeile weg, oder ändern Sie sie.`,
  'no-such-hive': ({ text }, field) =>
    `${field}: Es gibt kein Volk „${text}“. Übernehmen Sie zuerst die Völker, oder lassen Sie es leer.`,
  'no-such-box': ({ text }, field) =>
    `${field}: Es gibt kein Kästchen „${text}“. Übernehmen Sie zuerst die Kästchen, oder lassen Sie es leer.`,
  'more-than-before': ({ text, other }, field) =>
    `${field}: ${text} ist mehr als die ${other}, die es davor gab. Berichtigen Sie eines von beiden.`,
  'out-of-order': ({ text }, field) =>
    `${field}: ${text} liegt vor den ersten Eiern. Berichtigen Sie eines von beiden.`,
};

export const WHOLE_PROBLEM: Translation<typeof EnglishWhole> = {
  'not-valid': ({ field, text }) => `${field}: „${text}“ passt nicht. Berichtigen Sie es in der Datei.`,
  'points-nowhere': ({ field, text }) =>
    `${field}: Es gibt keine Zeile „${text}“, auf die es zeigen könnte. Fügen Sie der Datei diese Zeile hinzu.`,
  taken: ({ field, text }) =>
    `${field}: „${text}“ gehört zu einer anderen Zeile dieses Arbeitsbuchs. Übernehmen Sie die Datei stattdessen in ein neues Arbeitsbuch.`,
  twice: ({ field, text }) => `${field}: „${text}“ steht zweimal in der Datei. Behalten Sie eine von beiden Zeilen.`,
};

export const tablesIn: Translation<typeof english> = {
  title: 'Eine Tabelle übernehmen',
  explain:
    'Aus einer CSV- oder XLSX-Datei, deren erste Zeile die Überschriften enthält. Nichts wird geschrieben, bevor Sie gesehen haben, was aus jeder Zeile wird.',
  kind: 'Die Zeilen sind',
  kinds: {
    hives: 'Völker',
    boxes: 'Begattungskästchen',
    queens: 'Königinnen',
    counts: 'Serien vergangener Saisons, mit ihren Zahlen',
    weather: 'Flugwetter, Tag für Tag',
  },
  file: 'Datei',
  sheet: 'Blatt',
  columns: 'Welche Spalte was ist',
  leave: 'weglassen',
  dayOrder: 'Tage sind geschrieben',
  dayOrders: {
    'day-first': 'Tag, Monat, Jahr: 14.5.2024',
    'month-first': 'Monat, Tag, Jahr: 5/14/2024',
    'year-first': 'Jahr, Monat, Tag: 2024-05-14',
  },
  notSaid: 'wählen',
  unclear: 'Tage in dieser Datei lassen sich auf zwei Arten lesen. Sagen Sie, wie sie geschrieben sind.',
  method: 'Verfahren, wo keine Spalte es sagt',
  boxType: 'Bauart, wo keine Spalte sie sagt',
  queenPlace: 'Wo sie sind, wo keine Spalte es sagt',
  missing: (fields: readonly string[]) =>
    `Sagen Sie, welche Spalte das ist: ${fields.join(', ')}. Ohne sie kann keine Zeile übernommen werden.`,
  ready: (ready: number, all: number) => `${ready} von ${rows(all)} können übernommen werden.`,
  newYards: (yards: readonly string[]) => `Neue Stände: ${yards.join(', ')}.`,
  problemRow: 'Zeile',
  tableRow: (table: string, row: number) => `${table}, Zeile ${row}.`,
  problem: 'Was nicht stimmt, und was hilft',
  moreProblems: (n: number) => `Insgesamt stimmt mit ${rows(n)} etwas nicht.`,
  leaveOut: 'Zeilen weglassen, mit denen etwas nicht stimmt',
  preview: 'Die ersten Zeilen der Datei',
  take: (n: number) => `${rows(n)} übernehmen`,
  taken: (added: number, leftOut: number, copied: boolean) =>
    `${rows(added)} übernommen${leftOut === 0 ? '' : `, ${leftOut} weggelassen`}.${copied ? ' Vorher wurde eine Sicherung gemacht.' : ''}`,
  countsHint: 'Zahlen ohne eigenen Tag bekommen den Tag der Larvengabe.',
  whole: {
    title: 'Eine Gesamtdatei übernehmen',
    explain:
      'Eine JSON-Datei, die hier als „Alles“ gespeichert wurde. Zeilen, die es hier schon gibt, werden überschrieben, andere hinzugefügt, keine entfernt.',
    file: 'JSON-Datei',
    what: (name: string, day: string) => `„${name}“, gespeichert ${day}.`,
    counts: (added: number, changed: number, same: number) =>
      `${added} neu, ${changed} geändert, ${same} gleich wie hier.`,
    take: 'Übernehmen',
    taken: (added: number, changed: number) => `${rows(added)} hinzugefügt, ${changed} überschrieben.`,
    problems: 'So kann sie nicht übernommen werden',
  },
};
