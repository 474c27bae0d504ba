import type { plainLabels as english } from '../english/plain-labels.ts';
import type { Translation } from '../translation.ts';

export const plainLabels: Translation<typeof english> = {
  section: 'Etiketten für Leisten, Käfige und Königinnen',
  what: 'Etiketten für',
  kinds: { bars: 'Leisten', cages: 'Käfige', queens: 'Königinnen' },
  batch: 'Serie',
  count: (n: number) => (n === 1 ? '1 Etikett' : `${n} Etiketten`),
  none: {
    bars: 'Diese Serie hat noch keine Leiste.',
    cages:
      'Von dieser Serie wurde keine Zelle gezählt, und keine ist geplant, also gibt es keinen Käfig zu beschriften.',
    queens: 'Keine Königin mit Nummer ist bei Ihnen.',
  },
  bar: (number: number) => `Leiste ${number}`,
  cage: (number: number) => `Käfig ${number}`,
  line: (line: string) => `Linie ${line}`,
  given: (day: string) => `gegeben ${day}`,
  emerges: (day) => `schlüpft ab ${day}`,
  eggs: (day: string) => `Eier ${day}`,
  proved: (day: string) => `erwiesen ${day}`,
  title: (kind: string) => `Etiketten für ${kind}`,
  fileName: (kind: string, what: string) => `ripecell-etiketten-${kind}-${what}.pdf`,
  save: 'Diese Etiketten speichern',
  codeNeeds: (mm: number) =>
    `Der quadratische Code braucht ${mm} mm Platz und wäre hier zu fein zum Lesen. Wählen Sie ein größeres Etikett, oder lassen Sie ihn weg.`,
  unprintable:
    'Keine der beiden Schriften hat diese Buchstaben; gedruckt wird dafür „?“. Wo das nicht genügt, den Namen mit anderen Buchstaben schreiben.',
  unprintableOn: (label: string, letters: readonly string[]) => `Etikett ${label}: ${letters.join(' ')}`,
};
