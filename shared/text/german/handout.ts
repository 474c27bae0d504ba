import type { handout as english } from '../english/handout.ts';
import type { Translation } from '../translation.ts';

export const handout: Translation<typeof english> = {
  title: (method: string) => `${method}: Zeitplan`,
  ruler:
    'Jede Spalte ist ein Tag, gezählt vom Tag der Larvengabe. Schraffiert: Finger weg. Umrandet: Königinnen können schlüpfen. Zeichen oben: etwas zu tun.',
  stageDays: (stage: string, from: number, to: number) => `${stage} von Tag ${from} bis Tag ${to}`,
  bees: {
    egg: 'Eier, junge Larven',
    larva: 'Ammen füttern Larven',
    sealed: 'Larve wird Königin',
    ready: 'Zellen sind reif',
    virgin: 'Königin fliegt, paart sich',
    laying: 'Königinnen legen',
  },
  columns: {
    day: 'Datum',
    number: 'Tag',
    bees: 'was die Bienen tun',
    step: 'Schritt',
    what: 'was wir tun',
    notes: 'eigene Notizen',
  },
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
