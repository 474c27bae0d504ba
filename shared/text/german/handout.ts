import type { handout as english } from '../english/handout.ts';
import type { Translation } from '../translation.ts';

export const handout: Translation<typeof english> = {
  title: (method: string) => `${method}: Zeitplan`,
  ruler:
    'Jeder Strich ist ein Tag, gezählt vom Tag der Larvengabe. Schraffiert: Finger weg. Umrandet: Königinnen können schlüpfen. Zeichen oben: etwas zu tun.',
  columns: { day: 'Datum', number: 'Tag', step: 'Schritt', what: 'was wir tun', notes: 'eigene Notizen' },
  start: (day: string) => `Larven gegeben am ${day}.`,
  noStart: 'Tag 0 ist der Tag der Larvengabe.',
  caution:
    'Alle Tage sind Schätzungen: Sehen Sie im Zweifel einen Tag früher nach. Stiche können bei jedem eine schwere Allergie auslösen: Halten Sie ein Telefon bereit.',
  sources: (list: string) => `Quellen der Tage: ${list}`,
  page: (page: number, pages: number) => `Seite ${page} von ${pages}`,
  fileName: (method: string) => `ripecell-zeitplan-${method}.pdf`,
  variant: 'Für',
  variants: { dates: 'diesen ersten Tag', 'day-numbers': 'jedes Jahr, nur Tageszahlen', gaps: 'eine Übung mit Lücken' },
  save: 'Als PDF speichern',
};
