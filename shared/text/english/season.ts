import type { Certainty, CompareFactor, RateStage, WeighedStage } from '../../contract/season.ts';

/** "12 more", "3 fewer", "as many": a difference in whole numbers. */
const moreOrFewer = (difference: number): string => {
  const whole = Math.round(difference);
  if (whole === 0) return 'no more';
  return whole > 0 ? `${whole} more` : `${-whole} fewer`;
};

export const season = {
  title: 'Season',
  tabs: { compare: 'Compare', queens: 'How many queens', plan: 'Plan', weather: 'Weather', report: 'Report' },
  plan: 'Plan',
  compare: 'Compare',
  by: 'Compare by',
  and: 'and by',
  oneFactor: 'nothing else',
  allowingFor: 'Allowing for',
  allowNothing: 'nothing',
  in: 'In',
  allSeasons: 'all seasons',
  leaveOut: 'Leave out practice',
  ahead: 'Look ahead',
  aheadOf: (batches: number) => (batches === 1 ? 'the next batch' : `the next ${batches} batches`),
  stage: 'Chart shows',
  factors: {
    method: 'method',
    builder: 'builder colony',
    breeder: 'breeder',
    season: 'season',
    month: 'month',
    boxType: 'type of box',
  } satisfies Record<CompareFactor, string>,
  /** What several levels of a factor are called in "never tried on comparable ...". */
  manyOf: {
    method: 'methods',
    builder: 'builder colonies',
    breeder: 'breeders',
    season: 'seasons',
    month: 'months',
    boxType: 'types of box',
  } satisfies Record<CompareFactor, string>,
  /** What a difference of shares counts, of 100. */
  ofHundred: {
    take: 'taken cells per 100 larvae',
    sealing: 'sealed cells per 100 taken',
    emergence: 'queens per 100 cells',
    mating: 'proved queens per 100 emerged',
  } satisfies Record<WeighedStage, string>,
  stages: {
    take: { name: 'take', line: 'taken of given' },
    sealing: { name: 'sealed', line: 'sealed of those taken and left in' },
    emergence: { name: 'emergence', line: 'emerged of cells put in boxes' },
    mating: { name: 'mating', line: 'proved of those emerged' },
    through: { name: 'whole way', line: 'proved queens to expect of larvae given' },
  } satisfies Record<RateStage, { readonly name: string; readonly line: string }>,
  columns: { group: '', batches: 'Batches' },
  unknown: 'not said',
  chart: (stage: string, factor: string) => `${stage.charAt(0).toUpperCase()}${stage.slice(1)} by ${factor}`,
  figuresBy: (factor: string) => `Figures by ${factor}`,
  figure: (successes: string, of: string) => `${successes} of ${of}`,
  range: (range: string) => `9 times in 10: ${range}`,
  batchesN: (n: number) => (n === 1 ? '1 batch' : `${n} batches`),
  oneBatch: 'one batch only: mostly guesswork',
  none: 'not counted',
  saveFigures: 'Save the figures',
  figuresFile: (factor: string, day: string) => `figures by ${factor} ${day}`,
  figureColumns: [
    'group',
    'stage',
    'came',
    'of',
    'batches',
    'plain share',
    'plain from',
    'plain to',
    'weighed share',
    'weighed from',
    'weighed to',
  ],
  savedWords: {
    saved: (path: string) => `Saved as ${path}.`,
    notSaved: 'The figures could not be saved there. Choose another place.',
    downloaded: 'The figures lie in the downloads of your browser.',
  },
  finding: {
    nothing: 'Nothing has been counted to compare yet.',
    one: (group: string, stage: string, percent: string, n: number) =>
      `Only ${group} has figures for ${stage}: ${percent} over ${n === 1 ? 'one batch' : `${n} batches`}.`,
    weighing: 'Weighing the batches…',
    wholeWay: 'The whole way multiplies the stages; look at the stages to see what can be told apart.',
    certainty: {
      'cannot-tell': (a: string, b: string) => `${a} and ${b} cannot be told apart.`,
      leaning: (a: string, b: string) => `Leaning to ${a} over ${b}.`,
      probably: (a: string, b: string) => `${a} is probably better than ${b}.`,
      'very-likely': (a: string, b: string) => `${a} is very likely better than ${b}.`,
      'as-good-as-certain': (a: string, b: string) => `${a} is as good as certainly better than ${b}.`,
    } satisfies Record<Certainty, (a: string, b: string) => string>,
    bet: (times: number) =>
      `Bet on it twenty times, and it would be right about ${times === 20 ? 'every time' : `${times} times`}.`,
    best: (group: string) => `${group} is the best of them.`,
    difference: (mean: number, lower: number, upper: number, what: string) =>
      `About ${moreOrFewer(mean)} ${what}; 9 times in 10 between ${moreOrFewer(lower)} and ${moreOrFewer(upper)}.`,
    noMatter: 'Very likely no difference that matters: fewer than 5 of 100 either way.',
    swing: (group: string, of: number) =>
      of < 1
        ? `Single batches of ${group} show no sign of differing by more than luck.`
        : `Single batches of ${group} swing by about ${Math.round(of)} of 100 either way.`,
    next: {
      take: (group: string, of: number, span: string) =>
        `Of the next ${of} larvae given by ${group}, ${span} would be taken 9 times in 10.`,
      sealing: (group: string, of: number, span: string) =>
        `Of the next ${of} cells taken by ${group}, ${span} would be sealed 9 times in 10.`,
      emergence: (group: string, of: number, span: string) =>
        `Of the next ${of} cells by ${group}, ${span} would emerge 9 times in 10.`,
      mating: (group: string, of: number, span: string) =>
        `Of the next ${of} queens by ${group}, ${span} would be proved 9 times in 10.`,
    } satisfies Record<WeighedStage, (group: string, of: number, span: string) => string>,
    inBatches: (group: string, batches: number) => (batches === 1 ? group : `${group} in ${batches} batches`),
    span: (lower: number, upper: number) => (lower === upper ? String(lower) : `${lower} to ${upper}`),
    guesswork: (group: string) => `${group} rests on one batch only: mostly guesswork.`,
    allowing: (factor: string, sentence: string) => `Allowing for the ${factor}: ${sentence}`,
    tooFew: (factor: string) => `There are too few batches to allow for the ${factor}.`,
    notConnected: (a: string, b: string, many: string) =>
      `${a} and ${b} were never tried on comparable ${many}, so the two cannot be told from each other's ${many}.`,
    disagrees: (many: string) => `The two answers disagree because the groups were not tried on the same ${many}.`,
    settle: (more: number) =>
      `About ${more === 1 ? 'one more batch' : `${more} more batches`} of each would settle it, if both go on as they are.`,
    settleNever: (most: number) => `More than ${most} further batches of each would be needed to settle it.`,
  },
  range9: (range: string) => `about 9 times in 10 ${range}`,
  tableNote:
    'The ranges in this table take all cells of a group as one lot, so they are the least doubt there is. The picture below allows for batches that differ.',
  caveat:
    'Dots and ranges allow for how much batches differ and how few there are: small groups are drawn towards the others.',
  running: (n: number) =>
    n === 1
      ? '1 batch is still running or not counted to the end; it is left out of the whole way.'
      : `${n} batches are still running or not counted to the end; they are left out of the whole way.`,
  assumed: 'A box found without a queen counts as emerged unless its cell was seen dead or torn down.',
  behind: 'Batches behind this row',
  ticks: 'Small marks: single batches, larger for more cells.',
  empty: 'Nothing to compare yet. Start a batch and count it.',
  planPage: {
    empty: 'How many laying queens do you want, and by when? Write a wish down, or start a batch.',
    weeks: 'Week by week',
    batches: 'Batches',
    rows: {
      wanted: 'Queens wanted by then',
      builders: 'Builders at work',
      boxes: 'Boxes in use',
      away: 'Away',
      drones: 'Mature drones',
    },
    load: (most: number, of: number) => `${most} of ${of}`,
    tooFew: (missing: number) => `${missing} too few`,
    awayDays: (n: number) => (n === 1 ? '1 day' : `${n} days`),
    dronesFrom: (day: string) => `from ${day}`,
    dronesYes: 'yes',
    noDrones: 'no',
    dronesUnknown:
      'Under Settings, say when the first drone eggs of the season were laid; then this table says from when there are mature drones.',
    loadLine:
      'The most on one day of the week, by the calendars of all batches. A batch that is not counted yet wants as many boxes as it has cells.',
    expected: (lower: number, upper: number, proved: string) => `${lower} to ${upper} proved queens by ${proved}`,
    expectedLine:
      'Proved queens to expect: 9 times in 10 between these, by your own counts so far; few counts make a wide span.',
    wishes: 'Who wants queens',
    wishesEmpty: 'No wish is written down.',
    wishesLine: (wanted: number, proved: number, laying: number) =>
      `Still wanted: ${wanted}. In boxes now: ${proved} proved, ${laying} laying and not proved yet.`,
    move: 'Move',
    moveRead: (batch: string) => `Move ${batch}`,
    toComeLine: (wanted: number, mean: number, lower: number, upper: number, batches: number) =>
      `Wanted: ${wanted}. Still to come from ${batches === 1 ? '1 batch' : `${batches} batches`}: about ${mean} proved ${mean === 1 ? 'queen' : 'queens'} (${lower} to ${upper}, as if all went badly or all went well).`,
    toComeNone: (wanted: number) => `Wanted: ${wanted}. No batch is on that could still bring queens.`,
    without: 'Nothing counted and nothing planned, so not reckoned:',
    startLine: 'How many larvae to give for that?',
    columns: { who: 'Who', queens: 'Queens', by: 'By', handedOver: 'Handed over', open: 'Still wanted', note: 'Note' },
    own: 'own hives',
    settled: (day: string) => `settled on ${day}`,
    notReckoned: 'not reckoned',
    who: 'Who wants them',
    whoHint: 'Empty: for your own hives. The name as you write it when you give or sell a queen.',
    queens: 'Laying queens',
    by: 'By when',
    note: 'Note',
    add: 'Write the wish down',
    settle: 'Settle',
    reopen: 'Open again',
    remove: 'Take out',
    actsOn: (act: string, who: string, by: string) => `${act}: ${who}, ${by}`,
  },
  week: (n: number) => `week ${n}`,
} as const;
