import type { Kinship, StockTestKind, StockTrait } from '../../model/stock.ts';
import { type Measures, weightText } from '../feed-amount.ts';

interface TraitWords {
  readonly name: string;
  /** What each step means, from 4 down to 1. */
  readonly steps: readonly [string, string, string, string];
}

interface TestWords {
  readonly name: string;
  /** What is counted, and out of what. */
  readonly counted: string;
  readonly outOf: string | null;
  readonly figure: (value: number, measures: Measures) => string;
}

const percent = (share: number) => `${Math.round(share * 100)} %`;
const oneDecimal = (value: number) => value.toFixed(1);

/** Scores, tests, treatments and moves of a hive, and the table from which a breeder is chosen. */
export const stock = {
  title: 'Choose a breeder',
  open: 'Choose a breeder',
  lead: 'Means of your own scores with the number behind each. Compare hives that were scored on the same days; a hive scored on other days may only have had other weather.',
  seasons: 'Scores of',
  seasonsN: (n: number) => (n === 1 ? 'this season' : `${n} seasons`),
  empty: 'No hive yet.',
  columns: {
    hive: 'Hive',
    line: 'Line',
    queen: 'Queen',
    pin: 'Pin test',
    mites: 'Mites per 100',
    honey: 'Honey',
  },
  sortBy: (column: string) => `Sort by ${column}`,
  breeder: 'breeder now',
  age: (n: number) =>
    n < 1 ? 'this year’s' : n === 1 ? 'in her 2nd year' : n === 2 ? 'in her 3rd year' : `${n} years old`,
  figure: oneDecimal,
  n: (n: number) => `n ${n}`,
  kin: {
    'same-hive': (hive) => `raises drones herself: ${hive}`,
    'mother-daughter': (hive) => `mother or daughter of drone mother ${hive}`,
    sisters: (hive) => `sister of drone mother ${hive}`,
    'same-line': (hive) => `same line as drone mother ${hive}`,
  } satisfies Readonly<Record<Kinship, (hive: string) => string>>,
  none: 'no score',
  notTested: 'not tested',
  tooFew: (n: number, fewest: number) => `too few to say: ${n} of ${fewest}`,
  hygienic: 'hygienic by the strict rule',
  notHygienic: 'not hygienic by the strict rule',
  honeyFigure: (weight: string, season: number) => `${weight} in ${season}`,
  honeyBeside: (deviation: string, share: string, n: number) => `${deviation}, ${share} of the mean of ${n}`,
  honeyFew: (n: number, fewest: number) => `too few hives to compare: ${n} of ${fewest}`,
  footnotes: [
    'Gentleness and calmness are means; of swarming the lowest score counts. Fewer than 4 scores say little.',
    'A freeze test did not foretell mites in stock that was not selected for it. Two pin tests at least.',
    'How many mites call for action, your local advice says; often 1 to 3 per 100 bees.',
    'Breed from several mothers: not more than a third of the queens from one, and drones from others. Kinship is shown as far as your register knows it; where none is shown, none may be known.',
  ],
  traits: {
    gentleness: {
      name: 'Gentleness',
      steps: [
        'no smoke or veil needed',
        'a little smoke, no stings',
        'single bees attack even with smoke',
        'strong attack despite smoke and clothing',
      ],
    },
    calmness: {
      name: 'Calmness on the comb',
      steps: ['stay like fur', 'move, but stay on the comb', 'partly leave, hang at the edges', 'run off in clusters'],
    },
    swarming: {
      name: 'Swarming',
      steps: [
        'no charged cells',
        'a few cells, stopped by room and destroying',
        'cells again and again',
        'swarmed, or kept only by drastic steps',
      ],
    },
  } satisfies Record<StockTrait, TraitWords>,
  tests: {
    'pin-test': { name: 'Pin test', counted: 'Cells cleared', outOf: 'Cells pierced', figure: percent },
    'freeze-test': { name: 'Freeze test', counted: 'Cells cleared', outOf: 'Sealed cells frozen', figure: percent },
    'mite-wash': {
      name: 'Mites washed off',
      counted: 'Mites',
      outOf: 'Bees',
      figure: (value: number) => `${oneDecimal(value)} per 100 bees`,
    },
    'mite-fall': {
      name: 'Mites fallen',
      counted: 'Mites',
      outOf: 'Days',
      figure: (value: number) => `${oneDecimal(value)} a day`,
    },
    honey: {
      name: 'Honey',
      counted: 'Kilograms',
      outOf: null,
      figure: (value: number, measures: Measures) => weightText(value, measures, 'en'),
    },
  } satisfies Record<StockTestKind, TestWords>,
  scores: {
    title: 'Scores',
    none: 'No score yet. Score all hives of a yard on the same day.',
    trait: 'Trait',
    score: 'Score',
    step: (score: number, text: string) => `${score}, ${text}`,
    given: (score: number, more: string) => `${score} (${more})`,
    between: (score: number) => `${score}, in between`,
    day: 'Day',
    note: 'Note',
    add: 'Write the score down',
    columns: { trait: 'Trait', value: 'Figure', n: 'n', last: 'Scores, newest first' },
  },
  testing: {
    /** What honey is weighed in. */
    weight: { metric: 'Kilograms', us: 'Pounds' },
    title: 'Tests',
    none: 'No test yet.',
    kind: 'Test',
    day: 'Day',
    hours: 'After hours',
    note: 'Note',
    add: 'Write the test down',
    columns: { day: 'Day', kind: 'Test', figure: 'Figure', counted: 'Counted', note: 'Note' },
    of: (counted: number, outOf: number) => `${counted} of ${outOf}`,
    after: (hours: number) => `after ${hours} h`,
  },
  treatments: {
    title: 'Treatments',
    none: 'No treatment written down.',
    product: 'Product',
    amount: 'Amount',
    reason: 'Because of',
    paper: 'Paper or product number',
    from: 'From',
    to: 'Until',
    note: 'Note',
    add: 'Write the treatment down',
    caution:
      'Use only what is allowed where you are, as its label says: dose, warmth, clothing, honey on the hive. Think of queens, open cells and drones before you dose. Nothing here is veterinary or legal advice.',
    span: (from: string, to: string) => `${from} to ${to}`,
  },
  moves: {
    title: 'Moves and queens',
    none: 'No move written down.',
    noQueens: 'No queen with a number is known to have headed this hive.',
    day: 'Day',
    yard: 'To yard',
    place: 'Place there',
    paper: 'Permit or paper, if any',
    note: 'Note',
    add: 'Write the move down',
    caution: 'Moving bees may need a register, a permit or an inspection. Ask your local bee authority.',
    moved: (from: string, to: string) => `${from} → ${to}`,
    queen: (from: string, until: string | null) => (until === null ? `since ${from}` : `${from} to ${until}`),
  },
} as const;
