import type { IsoDay } from '../../kernel/day.ts';
import type { AutumnQueen, FirstDo, JoinReason, LeftReason, OutReason, QueenClaim } from '../../model/autumn-pair.ts';

function whyJoined(reason: JoinReason): string {
  switch (reason.kind) {
    case 'weak':
      return `Strength ${reason.strength} of 5: weak.`;
    case 'no-queen':
      return 'No queen.';
    case 'given-up':
      return 'Its queen is given up: no eggs.';
    case 'drone-layer':
      return 'Its queen is a drone-layer. Shaking the bees out is the other way: they are old.';
  }
}

function whyOut(reason: OutReason): string {
  switch (reason.kind) {
    case 'drone-layer':
      return 'she is a drone-layer';
    case 'given-up':
      return 'she never laid';
    case 'not-proved':
      return 'she is not proved';
    case 'older':
      return `the older of the two, of ${reason.bornIn}; the other is of ${reason.otherBornIn}`;
    case 'same-year':
      return `both are of ${reason.bornIn}; hers is the weaker box`;
    case 'year-unknown':
      return 'it is not known which is older; hers is the weaker box';
  }
}

function claim(said: QueenClaim): string {
  switch (said.kind) {
    case 'promised':
      return `promised to ${said.to}`;
    case 'wanted':
      return 'wanted';
    case 'perhaps':
      return 'wanted or spare';
    case 'spare':
      return 'spare';
  }
}

function whyLeft(why: LeftReason<IsoDay>, day: (on: IsoDay) => string): string {
  switch (why.kind) {
    case 'stays':
      return 'Can stay by itself.';
    case 'strength-unknown':
      return 'Look at its strength first: none was typed.';
    case 'strength-old':
      return `Look at its strength first: the last one is of ${day(why.on)}.`;
    case 'not-proved-yet':
      return 'Wait until she is proved.';
    case 'on-the-way':
      return 'Wait: a queen may still come to lay.';
    case 'look-again':
      return 'Look again first: it is not sure what is in it.';
    case 'workers-may-lay':
      return 'Shake it out, do not unite it: long without brood, its workers may lay.';
    case 'cell-at-hand':
      return 'Give it the ripe cell that is at hand: see above.';
    case 'bees-gone':
      return 'Found empty: nothing to unite.';
    case 'no-neighbour':
      return 'Ought to be united, but the same yard has no fitting neighbour: strong, of the same build, and with one proved queen between the two.';
  }
}

export const autumnPairs = {
  title: 'Before winter',
  lead: 'Which boxes could be united: a weak one, or one without a proved queen, with a neighbour of the same yard and build. Proposals only; nothing changes in the workbook until you free a box on its card or move a queen on her page.',
  cautions: [
    'Two queens in one box fight, and the good one may be the one that dies. Take one out first, and look that no other is there.',
    'A good queen that is taken out must go somewhere on that day: to somebody, into a hive, or into a cage.',
    'Unite in the evening, with a sheet of newspaper between or as it is done where you live. Where you suspect disease, unite nothing and ask first.',
    'Feed and treat before winter by the label and by your local rules. Whether a box of this size winters where you live, local beekeepers know.',
  ],
  custom: (weak: number, days: number) =>
    `Weak is strength ${weak} or less; a strength older than ${days} days does not count. Both, and the pairs, are common practice, no source.`,
  wanted: (queens: number, proved: number) =>
    `${queens === 1 ? '1 queen is' : `${queens} queens are`} still wanted by open wishes; ${
      proved === 1 ? '1 proved queen in a box is' : `${proved} proved queens in boxes are`
    } not promised.`,
  empty: 'No box holds a cell or queen.',
  none: 'No two boxes to unite.',
  pairs: 'Boxes that could be united',
  board: 'How the boxes stand',
  columns: {
    box: 'Box',
    keeper: 'With',
    yard: 'Yard',
    why: 'Why',
    out: 'Queen that comes out',
    first: 'Do first',
    strength: 'Strength',
    queen: 'Queen',
    claim: 'Wanted or spare',
    what: 'Before winter',
  },
  whyJoined,
  outNone: 'none',
  outOf: (box: string) => `the queen of ${box}`,
  whyOut,
  claim,
  whyLeft,
  first: {
    'look-through': 'Look through the box without a queen once more: a virgin is easily missed.',
    'take-out': 'Take her out, then unite.',
    'give-or-cage': 'Give her to whom she is meant for, or cage her; she must not be lost. Then unite.',
  } satisfies Record<FirstDo, string>,
  queens: {
    proved: 'proved',
    laying: 'laying, not proved',
    'on-the-way': 'on her way',
    'not-sure': 'not sure',
    none: 'none',
    'given-up': 'given up',
    'drone-layer': 'drone-layer',
    'bees-gone': 'bees gone',
  } satisfies Record<AutumnQueen, string>,
  ofYear: (year: number) => `of ${year}`,
  strengthOf: (strength: number, day: string) => `${strength} of 5, ${day}`,
  notTyped: 'not typed',
  uniteWith: (box: string) => `Unite with ${box}.`,
} as const;
