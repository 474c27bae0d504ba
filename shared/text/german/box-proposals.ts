import type { REASONS as EnglishReasons, boxProposals as english } from '../english/box-proposals.ts';
import type { Translation } from '../translation.ts';

const days = (n: number) => (n === 1 ? '1 Tag' : `${n} Tage`);
const afterDays = (n: number) => (n === 1 ? 'Seit 1 Tag' : `Seit ${n} Tagen`);

export const REASONS: Translation<typeof EnglishReasons> = {
  proved: ({ on, age }, day) => `Erwiesen am ${day(on)}, ${days(age)} nach dem Schlupf: Sie kann entnommen werden.`,
  'bees-gone': ({ on }, day) => `Leer gefunden am ${day(on)}.`,
  'drone-layer': ({ on }, day) => `Drohnenbrut in Arbeiterinnenzellen am ${day(on)}.`,
  'no-queen': ({ looks, on }, day) =>
    looks === 1 ? `Weisellos am ${day(on)}.` : `Bei ${looks} Kontrollen nacheinander weisellos, zuletzt am ${day(on)}.`,
  'may-be-missed': ({ on }, day) => `Keine Königin am ${day(on)}, aber eine unbegattete übersieht man leicht einmal.`,
  'cell-failed': ({ on }, day) => `Die Zelle war am ${day(on)} tot oder ausgebissen.`,
  'cell-closed': ({ on }, day) => `Die Zelle war am ${day(on)} noch geschlossen: Sie wird nicht mehr schlüpfen.`,
  'no-eggs-yet': ({ on, age }, day) => `Keine Eier am ${day(on)}; heute ist Tag ${age}.`,
  late: () => 'Das ist spät für die Begattung.',
  'given-up': ({ age }) => `Keine Eier bis Tag ${age}: Sie wird aufgegeben. Nehmen Sie sie zuerst heraus.`,
  'never-looked': ({ age }) => `Seit dem Einsetzen der Zelle nicht kontrolliert; heute ist Tag ${age}.`,
  'laying-workers': ({ broodlessDays }) =>
    `${afterDays(broodlessDays)} keine Brut: Arbeiterinnen können legen. Mehrere Eier in einer Zelle zeigen es; solche Bienen schüttelt man ab, man vereinigt sie nicht.`,
  weak: ({ strength }) => `Stärke ${strength} von 5: zu schwach für eine weitere Runde.`,
  'cells-coming': ({ batch, on }, day) => `Schlupfreife Zellen von ${batch} am ${day(on)}.`,
  'no-cells-coming': () => 'Keine schlupfreife Zelle in der kommenden Woche.',
};

const KINDS: Readonly<Record<string, string>> = {
  're-use': 'Königin entnehmen, Kästchen wieder benutzen',
  'give-cell': 'eine neue Zelle geben',
  unite: 'mit einem Nachbarn vereinigen',
  'shake-out': 'abschütteln',
  'look-again': 'noch einmal kontrollieren',
};

export const boxProposals: Translation<typeof english> = {
  title: 'Was man tun könnte',
  none: 'Nichts vorzuschlagen: Jedes Kästchen ist auf seinem Weg.',
  lead: 'Vorschläge mit ihren Gründen; Sie entscheiden. Wo Sie Krankheit vermuten, vereinigen Sie nichts und fragen Sie zuerst.',
  what: (kind, proved) => (kind === 're-use' && !proved ? 'Kästchen wieder benutzen' : (KINDS[kind] ?? kind)),
  accept: {
    're-use': 'Kästchen freimachen',
    'give-cell': 'Für eine Zelle freimachen',
    unite: 'Vereinigt',
    'shake-out': 'Abgeschüttelt',
    'look-again': 'Kontrolle planen',
  },
  acceptRead: (act: string, box: string) => `${act}, ${box}`,
  on: (day: string) => `am ${day}`,
  planned: (box: string, day: string) => `${box} steht für ${day} auf der Liste von Heute.`,
  freed: (box: string) => `${box} ist frei.`,
  freeFrom: (day: string) => `Frei für eine Zelle ab ${day}.`,
  placeCells: (batch: string) => `Zellen von ${batch} in Kästchen setzen`,
  sources: 'Woher diese Tage kommen',
  facts: {
    daysToNextCell: 'Vom Entnehmen einer Königin bis zur nächsten Zelle',
    ownCellsCheck: 'Eigene Zellen zerstört, wenn keine Zelle gegeben wurde',
    layingWorkers: 'Ohne Brut, bis Arbeiterinnen legen können',
    lateForMating: 'Nach dem Schlupf, spät für die Begattung',
    giveUp: 'Nach dem Schlupf, ohne Eier aufgegeben',
    ageToTake: 'Nach dem Schlupf, bis man sie am besten entnimmt',
    lookAgain: 'Bis ein zweifelhaftes Kästchen wieder kontrolliert wird',
    closedCell: 'Nach dem erwarteten Schlupf wird eine geschlossene Zelle aufgegeben',
    cellsWorthWaiting: 'Schlupfreife Zellen, die als nah gelten',
    strengthHolds: 'Bis eine Stärke vor dem Winter nicht mehr zählt',
  },
  factColumns: { what: 'Was', days: 'Tage', range: 'Von bis', source: 'Quelle' },
};
