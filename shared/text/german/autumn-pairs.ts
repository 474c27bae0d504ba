import type { IsoDay } from '../../kernel/day.ts';
import type { JoinReason, LeftReason, OutReason, QueenClaim } from '../../model/autumn-pair.ts';
import type { autumnPairs as english } from '../english/autumn-pairs.ts';
import type { Translation } from '../translation.ts';

function whyJoined(reason: JoinReason): string {
  switch (reason.kind) {
    case 'weak':
      return `Stärke ${reason.strength} von 5: schwach.`;
    case 'no-queen':
      return 'Keine Königin.';
    case 'given-up':
      return 'Seine Königin ist aufgegeben: keine Eier.';
    case 'drone-layer':
      return 'Seine Königin ist drohnenbrütig. Man kann die Bienen auch abschütteln: Sie sind alt.';
  }
}

function whyOut(reason: OutReason): string {
  switch (reason.kind) {
    case 'drone-layer':
      return 'sie ist drohnenbrütig';
    case 'given-up':
      return 'sie hat nie gelegt';
    case 'not-proved':
      return 'sie ist nicht erwiesen';
    case 'older':
      return `die ältere von beiden, von ${reason.bornIn}; die andere ist von ${reason.otherBornIn}`;
    case 'same-year':
      return `beide sind von ${reason.bornIn}; sie sitzt im schwächeren Kästchen`;
    case 'year-unknown':
      return 'welche älter ist, ist nicht bekannt; sie sitzt im schwächeren Kästchen';
  }
}

function claim(said: QueenClaim): string {
  switch (said.kind) {
    case 'promised':
      return `versprochen an ${said.to}`;
    case 'wanted':
      return 'gewünscht';
    case 'perhaps':
      return 'gewünscht oder übrig';
    case 'spare':
      return 'übrig';
  }
}

function whyLeft(why: LeftReason<IsoDay>, day: (on: IsoDay) => string): string {
  switch (why.kind) {
    case 'stays':
      return 'Kann für sich bleiben.';
    case 'strength-unknown':
      return 'Sehen Sie zuerst nach der Stärke: Es ist keine eingetragen.';
    case 'strength-old':
      return `Sehen Sie zuerst nach der Stärke: Die letzte ist vom ${day(why.on)}.`;
    case 'not-proved-yet':
      return 'Warten, bis sie erwiesen ist.';
    case 'on-the-way':
      return 'Warten: Eine Königin kann noch in Eilage kommen.';
    case 'look-again':
      return 'Zuerst noch einmal kontrollieren: Was darin ist, ist nicht sicher.';
    case 'workers-may-lay':
      return 'Abschütteln, nicht vereinigen: lange ohne Brut, Arbeiterinnen können legen.';
    case 'cell-at-hand':
      return 'Geben Sie ihm die schlupfreife Zelle, die bereit ist: siehe oben.';
    case 'bees-gone':
      return 'Leer gefunden: nichts zu vereinigen.';
    case 'no-neighbour':
      return 'Sollte vereinigt werden, aber auf demselben Stand ist kein passender Nachbar: stark, von gleicher Bauart und mit einer erwiesenen Königin in einem der beiden.';
  }
}

export const autumnPairs: Translation<typeof english> = {
  title: 'Vor dem Winter',
  lead: 'Welche Kästchen man vereinigen könnte: ein schwaches oder eines ohne erwiesene Königin mit einem Nachbarn auf demselben Stand und von gleicher Bauart. Nur Vorschläge; im Arbeitsbuch ändert sich nichts, bis Sie ein Kästchen auf seiner Karte freimachen oder eine Königin auf ihrer Seite umsetzen.',
  cautions: [
    'Zwei Königinnen in einem Kästchen kämpfen, und es kann die gute sein, die stirbt. Nehmen Sie zuerst eine heraus, und sehen Sie nach, dass keine weitere da ist.',
    'Eine gute Königin, die Sie herausnehmen, muss am selben Tag irgendwohin: zu jemandem, in ein Volk oder in einen Käfig.',
    'Vereinigen Sie am Abend, mit einem Bogen Zeitungspapier dazwischen oder wie man es bei Ihnen macht. Wo Sie Krankheit vermuten, vereinigen Sie nichts und fragen Sie zuerst.',
    'Füttern und behandeln Sie vor dem Winter nach der Packungsangabe und nach den Regeln bei Ihnen. Ob ein Kästchen dieser Größe bei Ihnen durch den Winter kommt, wissen Imker am Ort.',
  ],
  custom: (weak: number, days: number) =>
    `Schwach heißt Stärke ${weak} oder weniger; eine Stärke, die älter als ${days} Tage ist, zählt nicht. Beides und die Paare sind übliche Praxis, ohne Quelle.`,
  wanted: (queens: number, proved: number) =>
    `${queens === 1 ? '1 Königin ist' : `${queens} Königinnen sind`} nach offenen Wünschen noch gewünscht; ${
      proved === 1 ? '1 erwiesene Königin in einem Kästchen ist' : `${proved} erwiesene Königinnen in Kästchen sind`
    } nicht versprochen.`,
  empty: 'In keinem Kästchen ist eine Zelle oder Königin.',
  none: 'Keine zwei Kästchen zu vereinigen.',
  pairs: 'Kästchen, die man vereinigen könnte',
  board: 'Wie die Kästchen stehen',
  columns: {
    box: 'Kästchen',
    keeper: 'Mit',
    yard: 'Stand',
    why: 'Warum',
    out: 'Königin, die herauskommt',
    first: 'Zuerst zu tun',
    strength: 'Stärke',
    queen: 'Königin',
    claim: 'Gewünscht oder übrig',
    what: 'Vor dem Winter',
  },
  whyJoined,
  outNone: 'keine',
  outOf: (box: string) => `die Königin von ${box}`,
  whyOut,
  claim,
  whyLeft,
  first: {
    'look-through': 'Sehen Sie das Kästchen ohne Königin noch einmal durch: Eine unbegattete übersieht man leicht.',
    'take-out': 'Nehmen Sie sie heraus, dann vereinigen.',
    'give-or-cage':
      'Geben Sie sie dem, für den sie gedacht ist, oder käfigen Sie sie; sie darf nicht verloren gehen. Dann vereinigen.',
  },
  queens: {
    proved: 'erwiesen',
    laying: 'in Eilage, nicht erwiesen',
    'on-the-way': 'auf dem Weg',
    'not-sure': 'nicht sicher',
    none: 'keine',
    'given-up': 'aufgegeben',
    'drone-layer': 'drohnenbrütig',
    'bees-gone': 'Bienen weg',
  },
  ofYear: (year: number) => `von ${year}`,
  strengthOf: (strength: number, day: string) => `${strength} von 5, ${day}`,
  notTyped: 'nicht eingetragen',
  uniteWith: (box: string) => `Mit ${box} vereinigen.`,
};
