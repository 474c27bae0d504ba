import type { calendarWords as english } from '../english/calendar-file.ts';
import type { Translation } from '../translation.ts';

const events = (n: number) => (n === 1 ? '1 Termin' : `${n} Termine`);

export const calendarWords: Translation<typeof english> = {
  name: (workbook: string) => `${workbook}, Serien`,
  fileName: (batch: string | null) => (batch === null ? 'ripecell-kalender.ics' : `ripecell-kalender-${batch}.ics`),
  summary: (title: string, batch: string) => `${title}, ${batch}`,
  handsOffSummary: (title: string, batch: string) => `Finger weg: ${title}, ${batch}`,
  window: (earliest: string, latest: string) => `Möglich von ${earliest} bis ${latest}.`,
  categories: { job: 'Arbeit', 'hands-off': 'Finger weg', event: 'Zu erwarten' },
  title: 'Kalender fürs Telefon',
  explain:
    'Eine Datei ganztägiger Termine, die jeder Kalender übernehmen kann. Übernehmen Sie auch die nächste: Sie ändert die Termine, die Sie haben, und macht keinen doppelt.',
  which: 'Serien',
  all: 'Alle geplanten oder laufenden',
  reminder: 'Erinnerung',
  alarms: { none: 'keine', 'evening-before': 'am Abend davor, um 18:00', morning: 'am Morgen, um 7:00' },
  save: 'Kalenderdatei speichern',
  never: (n: number) => `Von diesen Serien wurde noch keine Kalenderdatei gemacht. Die erste hat ${events(n)}.`,
  list: 'Zeigen',
  fresh: (day: string) => `Die Datei vom ${day} stimmt noch: Seither hat sich nichts geändert.`,
  stale: (day: string, n: number) =>
    `Seit der Datei vom ${day} ${n === 1 ? 'hat sich 1 Termin' : `haben sich ${events(n)}`} geändert. Ihr Telefon weiß noch nichts davon.`,
  columns: { event: 'Termin', day: 'Tag', change: 'Im Telefon' },
  changes: { new: 'noch nicht da', changed: 'veraltet', cancelled: 'zu streichen', same: 'richtig' },
  wasOn: (day: string) => `war ${day}`,
  made: (n: number) => `${events(n)} in der Datei.`,
  nothing: 'Keine Serie ist geplant oder läuft, darum kommt nichts in einen Kalender.',
  saved: (path: string) => `Gespeichert als ${path}. Schicken Sie sie aufs Telefon und öffnen Sie sie dort.`,
  notSaved: 'Die Datei konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.',
  downloaded: 'Die Datei liegt in Ihren Downloads. Schicken Sie sie aufs Telefon und öffnen Sie sie dort.',
};
