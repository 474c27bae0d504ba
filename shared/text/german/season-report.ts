import type { seasonReport as english } from '../english/season-report.ts';
import type { Translation } from '../translation.ts';

const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const seasonReport: Translation<typeof english> = {
  title: (season: number) => `Saison ${season}`,
  button: 'Bericht der Saison',
  explain:
    'Die Saison auf Papier: alle Serien auf einer Zeile von Tagen, die Zahlen nach Verfahren, Pflegevolk, Zuchtvolk und Monat, was sich daraus sagen lässt, jede Serie, wo die Königinnen sind, und die Lehren.',
  which: 'Saison',
  save: 'Bericht speichern',
  making: 'Die Serien der Saison werden gewogen. Das kann einige Sekunden dauern.',
  none: 'Noch wurde keine Serie begonnen, darum gibt es nichts zu berichten.',
  headings: {
    words: 'Die Saison in Worten',
    stages: 'Stufe für Stufe',
    by: (factor: string) => `Nach ${factor}`,
    batches: 'Die Serien',
    queens: 'Die Königinnen',
    lessons: 'Lehren',
    changes: 'Änderungen für das nächste Jahr',
    gaps: 'Was nicht aufgeschrieben wurde',
  },
  streams: 'Alle Serien auf einer Zeile von Tagen; schwarz, wo die Königinnen schlüpfen',
  streamInWords: (batch: string, larvae: string, out: string) =>
    `${batch}: Larven gegeben ${larvae}, Königinnen geschlüpft ${out}`,
  state: (closed: number, running: number, planned: number) =>
    [
      closed > 0 ? `${closed} abgeschlossen` : '',
      running > 0 ? `${running} laufend` : '',
      planned > 0 ? `${planned} geplant` : '',
    ]
      .filter(Boolean)
      .join(', '),
  started: (batches: number, states: string) => `${many(batches, 'Serie', 'Serien')}: ${states}.`,
  practice: (batches: number) =>
    batches === 1
      ? '1 Serie war zur Übung und bleibt aus allen Zahlen weg.'
      : `${batches} Serien waren zur Übung und bleiben aus allen Zahlen weg.`,
  counted: (given: number, taken: number, sealed: number) =>
    `Soweit gezählt: ${many(given, 'Larve', 'Larven')} gegeben, ${many(taken, 'Zelle', 'Zellen')} angenommen und ${sealed} verdeckelt.`,
  boxed: (placed: number, emerged: number, laying: number, proved: number) =>
    `${many(placed, 'Zelle', 'Zellen')} in Kästchen gesetzt; ${many(emerged, 'Königin', 'Königinnen')} geschlüpft, ${laying} in Eilage, ${proved} erwiesen.`,
  columns: {
    stage: 'Stufe',
    share: 'Anteil',
    counts: 'Gezählt',
    range: 'in 9 von 10 Fällen',
    batches: 'Serien',
    batch: 'Serie',
    method: 'Verfahren',
    colonies: 'Zuchtvolk, Pflegevolk',
    larvae: 'Larven gegeben',
    given: 'Geg.',
    taken: 'Angen.',
    sealed: 'Verd.',
    boxed: 'Einges.',
    emerged: 'Geschl.',
    laying: 'Eilage',
    proved: 'Erw.',
  },
  states: { planned: 'geplant', running: 'laufend', closed: '' },
  practiceMark: 'Übung',
  notCounted: '·',
  rangeNote:
    'Die Spannen in den Tabellen nehmen alle Zellen einer Gruppe als eines, also sind sie der geringste Zweifel, den es gibt. Die Bilder berücksichtigen, dass Serien sich unterscheiden: Kleine Gruppen werden zu den anderen hingezogen.',
  key: 'Geg. gegeben, Angen. angenommen, Verd. verdeckelt, Einges. eingesetzt, Geschl. geschlüpft, Erw. erwiesen. Ein Punkt steht, wo nichts gezählt wurde; er ist keine Null.',
  chart: (stage: string, factor: string) => `${stage.charAt(0).toUpperCase()}${stage.slice(1)} nach ${factor}, von 100`,
  chartRow: (share: string, batches: number) => `${share}, ${many(batches, 'Serie', 'Serien')}`,
  stageSaid: (stage: string, certainty: string, rest: readonly string[]) =>
    [`${stage.charAt(0).toUpperCase()}${stage.slice(1)}: ${certainty}`, ...rest].join(' '),
  nothingToCompare: (factor: string) =>
    `Nach ${factor} hat nur eine Gruppe Zahlen, darum gibt es nichts zu vergleichen.`,
  numbered: (n: number) =>
    `${many(n, 'Königin', 'Königinnen')} dieser Saison ${n === 1 ? 'hat' : 'haben'} eine Nummer.`,
  noQueens: 'Keine Königin dieser Saison hat eine Nummer.',
  whereabouts: { place: 'Jetzt', count: 'Königinnen', numbers: 'Nummern' },
  goneTo: (number: string, to: string) => `${number} (${to})`,
  heard: (list: string) => `Von ihren Haltern gehört: ${list}.`,
  lesson: (batch: string, words: string) => `${batch}: ${words}`,
  changesLine: 'Was ich anders machen werde:',
  noLessons: 'Zu diesen Serien wurde keine Lehre aufgeschrieben.',
  gaps: {
    given: 'Gegebene Zellen nicht gezählt',
    taken: 'Angenommene Zellen nicht gezählt',
    sealed: 'Verdeckelte Zellen nicht gezählt',
    emergence: 'Einige Kästchen nie kontrolliert, ob sie heraus war',
    mating: 'Einige Königinnen nie in Eilage oder gescheitert gesehen',
    open: 'Noch offen, obwohl ihr Zeitplan abgelaufen ist',
    lesson: 'Ohne Lehre abgeschlossen',
  },
  gap: (what: string, batches: string) => `${what}: ${batches}.`,
  noGaps: 'Jede Stufe jeder Serie wurde gezählt.',
  foot: (workbook: string, day: string, change: number) => `${workbook}, Stand ${day}, Änderung ${change}`,
  page: (page: number, pages: number) => `Seite ${page} von ${pages}`,
  fileName: (season: number) => `ripecell-saison-${season}.pdf`,
};
