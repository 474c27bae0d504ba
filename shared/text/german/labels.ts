import type { labelWords as english } from '../english/labels.ts';
import type { Translation } from '../translation.ts';

export const labelWords: Translation<typeof english> = {
  mother: (mother: string) => `Mutter ${mother}`,
  noMother: 'Mutter nicht genannt',
  handsOff: (day: string) => `FINGER WEG bis ${day}`,
  handsOffStacked: ['FINGER', 'WEG'],
  handsOffDay: (day: string) => `bis ${day}`,
  look: (day: string) => `Eier ${day}`,
  brood: (day: string) => `Brut ${day}`,
  title: (batch: string) => `Etiketten ${batch}`,
  fileName: (batch: string) => `ripecell-etiketten-${batch}.pdf`,
};
