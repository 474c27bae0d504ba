import type { PaperName } from '../../model/noted-paper.ts';

/** Papers made from records, and what became of them after they were printed. */
export const printedPapers = {
  names: {
    'queen-card': (number) => `Hand-over card of queen ${number}`,
    'hive-page': (hive) => `Page of hive ${hive}`,
    'inspector-pages': (yard, year) => `Pages for an inspector, ${yard ?? 'all yards'}, ${year}`,
    'season-report': (_name, season) => `Report of the season ${season}`,
  } satisfies Readonly<Record<PaperName['paper'], (name: string | null, year: number | null) => string>>,
  printed: (day: string) => `Printed on ${day}. No record it is made of was changed since.`,
  changed: (day: string) => `Printed on ${day}. Something it says was changed since then: print it again.`,
  outOfDate: (paper: string, day: string) => `${paper}, printed on ${day}, is out of date. Print it again.`,
};
