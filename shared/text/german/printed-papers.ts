import type { printedPapers as english } from '../english/printed-papers.ts';
import type { Translation } from '../translation.ts';

export const PAPER_NAMES: (typeof english)['names'] = {
  'queen-card': (number) => `Begleitkarte der Königin ${number}`,
  'hive-page': (hive) => `Blatt des Volks ${hive}`,
  'inspector-pages': (yard, year) => `Blätter für eine Kontrolle, ${yard ?? 'alle Stände'}, ${year}`,
  'season-report': (_name, season) => `Bericht der Saison ${season}`,
};

export const printedPapers: Translation<typeof english> = {
  names: PAPER_NAMES,
  printed: (day) => `Am ${day} gedruckt. Seither wurde nichts geändert, woraus es gemacht ist.`,
  changed: (day) => `Am ${day} gedruckt. Seither hat sich etwas darauf geändert: Drucken Sie es neu.`,
  outOfDate: (paper, day) => `${paper}, gedruckt am ${day}, stimmt nicht mehr. Drucken Sie das Papier neu.`,
};
