import type { classPapers as English } from '../english/class-papers.ts';
import type { Translation } from '../translation.ts';

export const classPapers: Translation<typeof English> = {
  glossary: {
    section: 'Wörter auf Papier',
    title: 'Wörter der Königinnenzucht',
    columns: { word: 'Wort', meaning: 'Bedeutung' },
    save: 'Die Wörter speichern',
    file: 'ripecell-woerter.pdf',
  },
  foot: 'Für den Kurs; ohne Angaben über irgendjemanden',
};
