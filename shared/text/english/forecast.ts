import type { ExpectedCount } from '../../contract/forecast.ts';
import { amount } from '../share-text.ts';

const queens = (n: number): string => (n === 1 ? '1 queen' : `${n} queens`);
const span = (from: number, to: number): string => (from === to ? String(from) : `${from} to ${to}`);

/** What to expect of larvae, batches and hives, in plain words and whole numbers. */
export const forecast = {
  form: {
    title: 'What I want',
    wanted: 'Laying queens',
    surely: 'How surely',
    times: (times: number, of: number) => `${times} times in ${of}`,
    method: 'Method',
    untried: 'one I never tried',
    methodWith: (method: string, batches: number) =>
      `${method} (${batches === 1 ? '1 batch' : `${batches} batches`} counted)`,
    batches: 'Batches',
    asMany: 'as few as will do',
    batchesN: (n: number) => (n === 1 ? '1 batch, one builder' : `${n} batches, a builder each`),
    perBuilder: 'Most cells a builder finishes',
    perBuilderHint: 'Empty: no limit',
    boxes: 'Mating boxes there are',
    boxesHint: (free: number) => `Empty: as many as it takes. Free now: ${free}`,
    larvae: 'Larvae a batch',
    larvaeHint: 'Empty: find the fewest',
    whatIf: 'What if',
    whatIfHint: 'Leave a stage as it was counted, or try another share.',
    asCounted: 'as counted',
    wholeTo: (most: number) => `Type a whole number from 1 to ${most}, or leave it empty.`,
    try: (stage: string) => `Try another share: ${stage}`,
    share: (stage: string) => `Share tried: ${stage}`,
  },
  answer: {
    title: 'What it takes',
    reckoning: 'Reckoning…',
    one: (larvae: number) => `Give ${larvae} larvae in one batch`,
    many: (each: number, batches: number) =>
      `Give ${each} larvae in each of ${batches} batches (${each * batches} in all, a builder for each)`,
    boxes: (boxes: number) => `and have ${boxes === 1 ? '1 mating box' : `${boxes} mating boxes`} ready`,
    promise: (wanted: number, times: number) =>
      `Then at least ${queens(wanted)} will lay ${times === 20 ? 'nearly every time' : `about ${times} times in 20`}.`,
    likely: ({ likelyFrom, likelyTo, atLeast }: ExpectedCount) =>
      `Every second time ${span(likelyFrom, likelyTo)} will lay; ${
        atLeast === 0 ? 'that none will cannot be ruled out' : `9 chances in 10 of at least ${atLeast}`
      }.`,
    safety: (mean: number) =>
      `On average ${amount(Math.round(mean))} will lay: what lies above your number is the price of being sure, because batches differ.`,
    notReached: (wanted: number, times: number) =>
      `So sure of ${queens(wanted)} one cannot be: even with the most larvae it happens only about ${times} times in 20.`,
    heldBackBy: {
      builder: 'The builder holds it back: more batches, or more cells a builder, would do.',
      boxes: 'The boxes hold it back: more boxes would do.',
    },
    askLess: 'Ask for fewer queens, for less certainty, or for more batches.',
    guesswork: 'No batch of this method has been counted yet, so these figures are mostly guesswork.',
    together:
      'In this workbook good batches were good at several stages at once. The real spread is wider than said here.',
    onTheWay: 'On the way',
    way: ['larvae given', 'taken', 'sealed', 'emerged', 'laying'],
    rows: 'More larvae, fewer boxes',
    rowColumns: { larvae: 'Larvae a batch', boxes: 'Boxes', chance: 'Enough queens' },
    noBoxes: 'not with these boxes',
    times: (times: number) => (times === 20 ? 'nearly always' : times === 0 ? 'hardly ever' : `${times} times in 20`),
    losses: 'Where they are lost',
    lossColumns: {
      stage: 'Stage',
      rate: 'Share that goes on',
      lost: 'Lost of 100 larvae',
      largest: 'Loses the most',
      worth: 'Queens of 100 larvae, were it as good as in your best third',
    },
    lost: (mean: number, lower: number, upper: number) =>
      `${Math.round(mean)} (${span(Math.round(lower), Math.round(upper))})`,
    worth: (gained: number) => {
      const whole = Math.round(gained);
      return whole === 0 ? 'no change' : `${whole} more`;
    },
    lossNote: (laying: number) =>
      `Of 100 larvae about ${Math.round(laying)} come to lay. Early stages lose many cheap larvae, the last ones dear queens: look at both columns.`,
  },
  batch: {
    title: 'Against what was to be expected',
    columns: { stage: 'Stage', came: 'Came', expected: 'Expected', verdict: 'How it stands' },
    came: (came: number, of: number) => `${came} of ${of}`,
    expected: ({ lower, upper }: ExpectedCount) => span(lower, upper),
    standing: { 'as-expected': 'as expected', fewer: 'fewer than expected', more: 'more than expected' },
    restsOn: (method: string, batches: number) =>
      batches === 0
        ? `No other batch by ${method} has been counted, so the ranges are wide.`
        : `Ranges hold 9 times in 10 and rest on ${batches === 1 ? 'one other batch' : `${batches} other batches`} by ${method}.`,
    bars: (better: string, worse: string) =>
      `${better}, but only ${worse}: that is more than luck. Think of where the bar hung, its larvae and who worked it.`,
    bar: {
      take: (n: number, came: number, of: number) => `bar ${n}: ${came} of ${of} taken`,
      sealing: (n: number, came: number, of: number) => `bar ${n}: ${came} of ${of} sealed`,
    },
    toCome: {
      planned: (of: number) => `If ${of} larvae are given, as planned`,
      given: (of: number) => `From ${of} larvae given`,
      taken: (of: number) => `From ${of} cells taken`,
      sealed: (of: number) => `From ${of} sealed cells, if each gets a box`,
      placed: (of: number) => `From ${of} cells in boxes`,
    },
    queens: ({ likelyFrom, likelyTo, atLeast }: ExpectedCount) =>
      `every second time ${span(likelyFrom, likelyTo)} proved queens; ${
        atLeast === 0 ? 'that there will be none cannot be ruled out' : `9 chances in 10 of at least ${atLeast}`
      }.`,
  },
  hive: {
    title: 'Against the rest',
    columns: { stage: 'Stage', own: 'This hive', rest: 'The others', verdict: 'How it stands' },
    own: (percent: string, range: string, batches: number) =>
      `${percent}, 9 times in 10 ${range}, ${batches === 1 ? '1 batch' : `${batches} batches`}`,
    rest: (percent: string, batches: number) => `${percent}, ${batches === 1 ? '1 batch' : `${batches} batches`}`,
    nobody: 'no other hive counted',
    hive: {
      'cannot-tell': 'cannot be told apart',
      leaning: 'leaning to this hive',
      probably: 'probably better',
      'very-likely': 'very likely better',
      'as-good-as-certain': 'as good as certainly better',
    },
    others: {
      'cannot-tell': 'cannot be told apart',
      leaning: 'leaning to the others',
      probably: 'probably worse',
      'very-likely': 'very likely worse',
      'as-good-as-certain': 'as good as certainly worse',
    },
    note: 'Few batches are drawn towards the rest; the ranges allow for batches that differ.',
  },
} as const;
