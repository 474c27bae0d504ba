import type { today as english } from '../english/today.ts';
import type { Translation } from '../translation.ts';

export const today: Translation<typeof english> = {
  title: 'Heute',
  doToday: 'Zu tun',
  leaveAlone: 'In Ruhe lassen',
  late: 'Überfällig',
  early: 'Geht schon jetzt',
  tomorrow: 'Morgen',
  bring: 'Mitnehmen',
  week: 'Die kommende Woche',
  weekColumns: { day: 'Tag', jobs: 'Arbeiten', minutes: 'Dauert', bring: 'Mitnehmen' },
  nothingThisWeek: 'Keine Arbeit in den kommenden sieben Tagen.',
  nothingToDo: 'Heute ist nichts zu tun.',
  nothingToLeave: 'Heute darf jedes Volk und jedes Kästchen geöffnet werden.',
  nothingTomorrow: 'Morgen nichts.',
  minutes: (n: number) => {
    if (n < 60) return `etwa ${n} Minuten`;
    const hours = Math.round(n / 30) / 2;
    return hours === 1 ? 'etwa eine Stunde' : `etwa ${String(hours).replace('.', ',')} Stunden`;
  },
  dayN: (n: number) => {
    if (n === 0) return 'der Tag der Larvengabe';
    const days = Math.abs(n) === 1 ? '1 Tag' : `${Math.abs(n)} Tage`;
    return n > 0 ? `${days} nach der Larvengabe` : `${days} vor der Larvengabe`;
  },
  boxes: (codes: string, n: number) => `${codes} (${n} Kästchen)`,
  notChosen: 'Kästchen nicht gewählt',
  until: (day: string) => `bis ${day}`,
  hours: (from: number, to: number) => `${from} bis ${to} Uhr`,
  allDay: 'den ganzen Tag',
  dueUntil: (day: string) => `spätestens ${day}`,
  wasDue: (day: string) => `war fällig bis ${day}`,
  anyDay: (day: string) => `an jedem Tag bis ${day}`,
  clash: (batch: string) => `Nicht öffnen: Zellen von ${batch} müssen in Ruhe bleiben.`,
  clashRemedy: (days: string) => `Wieder frei: ${days}.`,
  open: {
    counts: 'Zahlen eintragen',
    'place-cells': 'Zellen in Kästchen setzen',
    looks: 'Kontrollen eintragen',
    mark: 'Erledigt',
  },
  doneThen: (day: string) => `Erledigt am ${day}`,
  doneToday: 'Heute erledigt',
  putOff: 'Verschieben',
  putOffRead: (job: string, batch: string) => `Verschieben: ${job}, ${batch}`,
  drop: 'Entfällt',
  dropRead: (job: string, batch: string) => `Entfällt: ${job}, ${batch}`,
  dropTold:
    'Sie gilt nicht als erledigt, und kein anderer Tag verschiebt sich. Auf der Seite der Serie lässt sich das zurücknehmen.',
  dropReason: 'Warum, wenn Sie mögen',
  dropSave: 'Diese Arbeit weglassen',
  dropBack: 'Zurück',
  dropNeeded:
    'Sie kann nicht entfallen: Die Bienen lassen keine Wahl. Vermerken Sie sie an ihrem Tag als erledigt, oder schließen Sie die Serie ab.',
  keys: (letters: boolean) =>
    letters
      ? 'Tab geht zu einer Arbeit, Pfeil auf und ab zur nächsten. Dort öffnet die Eingabetaste das Eintragen, die Leertaste heißt erledigt, S verschiebt, P druckt, was dazugehört.'
      : 'Tab geht zu einer Arbeit, Pfeil auf und ab zur nächsten. Dort öffnet die Eingabetaste das Eintragen, die Leertaste heißt erledigt.',
  keyOf: { open: 'Taste: Eingabe', done: 'Taste: Leertaste', putOff: 'Taste: S' },
  yardSheet: 'Standzettel drucken',
  typeSteps: 'Erledigtes eintragen',
  steps: {
    title: 'Erledigtes eintragen',
    columns: { job: 'Arbeit', batch: 'Serie', where: 'Wo', due: 'Geplant', now: 'Jetzt', note: 'Notiz' },
    results: {
      today: 'heute erledigt',
      yesterday: 'gestern erledigt',
      'as-planned': 'am geplanten Tag erledigt',
      'not-done': 'nicht erledigt',
    },
    legend: 'Tasten',
    keys: 'Eingabe geht zur nächsten Arbeit, Pfeil auf berichtigt, F4 Notiz, Strg+Eingabe ist fertig',
    progress: (done: number, all: number) => `${done} von ${all}`,
    summary: (n: number) => `${n === 1 ? '1 Arbeit' : `${n} Arbeiten`} erledigt.`,
    empty: 'Keine Arbeit wartet darauf, abgehakt zu werden. Zahlen und Kontrollen haben eigene Seiten.',
    read: (job: string, batch: string, where: string, due: string) =>
      `${job}, ${batch}${where ? `, ${where}` : ''}, ${due}. Tippen Sie D, Y, P oder einen Punkt.`,
  },
  calendar: {
    stale: (day: string, n: number) =>
      `Seit der Kalenderdatei vom ${day} ${n === 1 ? 'hat sich 1 Termin' : `haben sich ${n} Termine`} geändert; das Telefon weiß noch nichts davon.`,
    makeNew: 'Neue Datei machen',
    moved: (event: string, before: string, now: string) => `${event}: statt ${before} jetzt ${now}`,
    added: (event: string, day: string) => `${event}: neu, ${day}`,
    cancelled: (event: string) => `${event}: fällt weg`,
    other: (event: string) => `${event}: geändert`,
    more: (n: number) => `${n} weitere`,
  },
  emptyTitle: 'Keine Serie läuft.',
  empty: 'Beginnen Sie eine Serie, und ihre Arbeiten und Ruhetage erscheinen hier.',
  start: 'Serie beginnen',
  planSeason: 'Saison planen',
  seeDemo: 'Einen vollen Tag in der Vorführung ansehen',
  times: {
    any: '',
    'warm-hours': 'in den warmen Stunden',
    morning: 'am Vormittag',
    afternoon: 'am Nachmittag',
    evening: 'gegen Abend',
    'before-11-or-after-16': 'vor 11 Uhr oder nach 16 Uhr',
  },
};
