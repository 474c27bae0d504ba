import type { hivePapers as english } from '../english/hive-papers.ts';
import type { Translation } from '../translation.ts';

const counted = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const hivePapers: Translation<typeof english> = {
  hive: {
    section: 'Blatt des Volks',
    title: (name: string) => `Volk ${name}`,
    save: 'Blatt des Volks speichern',
    stands: (place: string) => `Steht: ${place}.`,
    nowhere: 'Platz nicht aufgeschrieben',
    roles: (season: number, roles: string) => `${season}: ${roles}`,
    file: (code: string) => `ripecell-volk-${code}.pdf`,
  },
  inspector: {
    section: 'Blätter für eine Kontrolle durch die Behörde',
    explain:
      'Völker, Versetzen, Behandlungen und Königinnen eines Jahres, wie Sie sie aufgeschrieben haben, und was nicht aufgeschrieben wurde. Was aufzubewahren ist, und in welcher Form, sagen Ihre örtlichen Vorschriften.',
    title: (yard: string, year: number) => `Aufzeichnungen über Völker ${year}, ${yard}`,
    allYards: 'alle Stände',
    year: 'Jahr',
    yard: 'Stand',
    save: 'Blätter speichern',
    rules:
      'Diese Blätter zeigen, was in diesem Arbeitsbuch aufgeschrieben wurde, und nur das. Was aufzuzeichnen, zu melden oder aufzubewahren ist, und wie lange, sagen Ihre örtlichen Vorschriften und Ihre zuständige Behörde für Bienen; bei Behandlungen haben die Anweisung des Mittels und ein Tierarzt das letzte Wort.',
    counts: (hives: number, moves: number, treatments: number) =>
      `${counted(hives, 'Volk', 'Völker')}, ${moves}-mal versetzt, ${counted(treatments, 'Behandlung', 'Behandlungen')}.`,
    file: (year: number) => `ripecell-aufzeichnungen-${year}.pdf`,
  },
  headings: {
    notRecorded: 'Was nicht aufgeschrieben wurde',
    roles: 'Aufgaben',
    hives: 'Völker',
    looks: 'Kontrollen',
    treatments: 'Behandlungen',
    feeding: 'Fütterung',
    moves: 'Versetzen',
    queens: 'Königinnen',
    queensInOut: 'Königinnen herein und hinaus',
  },
  columns: {
    hive: 'Volk',
    yard: 'Stand',
    place: 'Platz',
    lastLook: 'Letzte Kontrolle',
    ended: 'Beendet',
    day: 'Tag',
    strength: 'Bienen, 1 bis 5',
    food: 'Futter, 1 bis 5',
    note: 'Notiz',
    from: 'Von',
    to: 'Bis',
    feed: 'Futter',
    product: 'Mittel',
    amount: 'Menge',
    reason: 'Grund',
    paper: 'Papier',
    queen: 'Königin',
    what: 'Was geschah',
  },
  none: {
    hives: 'In diesem Jahr stand dort kein Volk.',
    looks: 'Keine Kontrolle wurde aufgeschrieben.',
    treatments: 'Keine Behandlung wurde aufgeschrieben.',
    feeding: 'Keine Fütterung wurde aufgeschrieben.',
    moves: 'Kein Versetzen wurde aufgeschrieben.',
    queens: 'Keine Königin wurde aufgeschrieben.',
  },
  blank: '·',
  key: 'Ein Punkt steht, wo nichts aufgeschrieben wurde.',
  gaps: {
    looks: 'Keine Kontrolle im Jahr',
    place: 'Stand nicht aufgeschrieben',
    amount: 'Behandlungen ohne Menge',
    end: 'Behandlungen ohne letzten Tag',
    product: 'Behandlungen ohne Nummer des Mittels oder der Verschreibung',
    route: 'Versetzen ohne den Stand, von dem oder zu dem',
    permit: 'Versetzen ohne Genehmigung oder anderes Papier',
    receiver: 'Weggegebene oder verkaufte Königinnen ohne Empfänger',
  },
  gap: (what: string, where: string) => `${what}: ${where}.`,
  noGaps: 'Jede Zeile, die hier ihren Platz hat, wurde ausgefüllt.',
};
