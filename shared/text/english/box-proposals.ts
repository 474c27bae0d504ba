import type { IsoDay } from '../../kernel/day.ts';
import type { ProposalKind, ProposalReason } from '../../model/box-proposal.ts';

const days = (n: number) => (n === 1 ? '1 day' : `${n} days`);

/** One sentence a reason; a kind left out does not compile. */
export const REASONS: {
  readonly [Kind in ProposalReason['kind']]: (
    reason: Extract<ProposalReason<IsoDay>, { kind: Kind }>,
    day: (on: IsoDay) => string,
  ) => string;
} = {
  proved: ({ on, age }, day) => `Proved on ${day(on)}, ${days(age)} out of her cell: she can be taken.`,
  'bees-gone': ({ on }, day) => `Found empty on ${day(on)}.`,
  'drone-layer': ({ on }, day) => `Drone brood in worker cells on ${day(on)}.`,
  'no-queen': ({ looks, on }, day) =>
    looks === 1 ? `No queen on ${day(on)}.` : `No queen ${looks} looks running, last on ${day(on)}.`,
  'may-be-missed': ({ on }, day) => `No queen on ${day(on)}, but a virgin is easily missed once.`,
  'cell-failed': ({ on }, day) => `The cell was dead or torn open on ${day(on)}.`,
  'cell-closed': ({ on }, day) => `The cell was still closed on ${day(on)}: she will not come out any more.`,
  'no-eggs-yet': ({ on, age }, day) => `No eggs on ${day(on)}; today is day ${age}.`,
  late: () => 'That is late for mating.',
  'given-up': ({ age }) => `No eggs by day ${age}: she is given up. Take her out first.`,
  'never-looked': ({ age }) => `Not looked into since the cell was put in; today is day ${age}.`,
  'laying-workers': ({ broodlessDays }) =>
    `No brood for ${days(broodlessDays)}: workers may lay. Several eggs in a cell say so; such bees are shaken out, not united.`,
  weak: ({ strength }) => `Strength ${strength} of 5: too weak for another round.`,
  'cells-coming': ({ batch, on }, day) => `Ripe cells of ${batch} on ${day(on)}.`,
  'no-cells-coming': () => 'No ripe cell in the coming week.',
};

const KINDS: Readonly<Record<ProposalKind, string>> = {
  're-use': 'take her out, use the box again',
  'give-cell': 'give a new cell',
  unite: 'unite with a neighbour',
  'shake-out': 'shake out',
  'look-again': 'look again',
};

export const boxProposals = {
  title: 'What could be done',
  none: 'Nothing to propose: every box is on its way.',
  lead: 'Proposals with their reasons; you decide. Where you suspect disease, unite nothing and ask first.',
  /** What is proposed; a box without a queen to take is just used again. */
  what: (kind: ProposalKind, proved: boolean) => (kind === 're-use' && !proved ? 'use the box again' : KINDS[kind]),
  accept: {
    're-use': 'Free the box',
    'give-cell': 'Free it for a cell',
    unite: 'United',
    'shake-out': 'Shaken out',
    'look-again': 'Plan the look',
  } satisfies Record<ProposalKind, string>,
  acceptRead: (act: string, box: string) => `${act}, ${box}`,
  on: (day: string) => `on ${day}`,
  planned: (box: string, day: string) => `${box} is on Today’s list for ${day}.`,
  freed: (box: string) => `${box} is free.`,
  freeFrom: (day: string) => `Free for a cell from ${day}.`,
  placeCells: (batch: string) => `Put cells of ${batch} in boxes`,
  sources: 'Where these days come from',
  facts: {
    daysToNextCell: 'From taking a queen out to the next cell',
    ownCellsCheck: 'Own cells destroyed, if no cell was given',
    layingWorkers: 'Without brood, until workers may lay',
    lateForMating: 'After emergence, late for mating',
    giveUp: 'After emergence, given up without eggs',
    ageToTake: 'After emergence, until she is best taken out',
    lookAgain: 'Until a doubtful box is looked into again',
    closedCell: 'After the expected emergence, a closed cell is given up',
    cellsWorthWaiting: 'Ripe cells counted as near',
    strengthHolds: 'Until a strength no longer counts, before winter',
  },
  factColumns: { what: 'What', days: 'Days', range: 'From to', source: 'Source' },
} as const;
