const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

/** Words on the report of a season. */
export const seasonReport = {
  title: (season: number) => `Season ${season}`,
  button: 'Season report',
  explain:
    'The season on paper: every batch on one line of days, the figures by method, builder, breeder and month, what can be said of them, every batch, where the queens are, and the lessons.',
  which: 'Season',
  save: 'Save the report',
  making: 'Weighing the batches of the season. This can take some seconds.',
  none: 'No batch has been started yet, so there is nothing to report.',
  headings: {
    words: 'The season in words',
    stages: 'Stage by stage',
    by: (factor: string) => `By ${factor}`,
    batches: 'The batches',
    queens: 'The queens',
    lessons: 'Lessons',
    changes: 'Changes for next year',
    gaps: 'What was not written down',
  },
  streams: 'All batches on one line of days; black where the queens come out',
  streamInWords: (batch: string, larvae: string, out: string) => `${batch}: larvae given ${larvae}, queens out ${out}`,
  state: (closed: number, running: number, planned: number) =>
    [
      closed > 0 ? `${closed} closed` : '',
      running > 0 ? `${running} running` : '',
      planned > 0 ? `${planned} planned` : '',
    ]
      .filter(Boolean)
      .join(', '),
  started: (batches: number, states: string) => `${many(batches, 'batch', 'batches')}: ${states}.`,
  practice: (batches: number) =>
    batches === 1
      ? '1 batch was for practice and is left out of all figures.'
      : `${batches} batches were for practice and are left out of all figures.`,
  counted: (given: number, taken: number, sealed: number) =>
    `As far as counted, ${many(given, 'larva was', 'larvae were')} given, ${many(taken, 'cell', 'cells')} taken and ${sealed} sealed.`,
  boxed: (placed: number, emerged: number, laying: number, proved: number) =>
    `${many(placed, 'cell was', 'cells were')} put in boxes; ${many(emerged, 'queen', 'queens')} emerged, ${laying} laid, ${proved} were proved.`,
  columns: {
    stage: 'Stage',
    share: 'Share',
    counts: 'Counted',
    range: '9 times in 10',
    batches: 'Batches',
    batch: 'Batch',
    method: 'Method',
    colonies: 'Breeder, builder',
    larvae: 'Larvae given',
    given: 'Given',
    taken: 'Taken',
    sealed: 'Sealed',
    boxed: 'In boxes',
    emerged: 'Emerged',
    laying: 'Laying',
    proved: 'Proved',
  },
  states: { planned: 'planned', running: 'running', closed: '' },
  practiceMark: 'practice',
  notCounted: '·',
  rangeNote:
    'The ranges in the tables take all cells of a group as one lot, so they are the least doubt there is. The pictures allow for batches that differ: small groups are drawn towards the others.',
  key: 'A dot stands where nothing was counted; it is not nought.',
  chart: (stage: string, factor: string) => `${stage.charAt(0).toUpperCase()}${stage.slice(1)} by ${factor}, of 100`,
  chartRow: (share: string, batches: number) => `${share}, ${many(batches, 'batch', 'batches')}`,
  stageSaid: (stage: string, certainty: string, rest: readonly string[]) =>
    [`${stage.charAt(0).toUpperCase()}${stage.slice(1)}: ${certainty}`, ...rest].join(' '),
  nothingToCompare: (factor: string) => `Only one ${factor} has figures, so there is nothing to compare.`,
  numbered: (n: number) => `${many(n, 'queen', 'queens')} of this season ${n === 1 ? 'has' : 'have'} a number.`,
  noQueens: 'No queen of this season has a number.',
  whereabouts: { place: 'Now', count: 'Queens', numbers: 'Numbers' },
  goneTo: (number: string, to: string) => `${number} (${to})`,
  heard: (list: string) => `Heard from their keepers: ${list}.`,
  lesson: (batch: string, words: string) => `${batch}: ${words}`,
  changesLine: 'What I shall do otherwise:',
  noLessons: 'No lesson was written for these batches.',
  gaps: {
    given: 'Cells given not counted',
    taken: 'Taken cells not counted',
    sealed: 'Sealed cells not counted',
    emergence: 'Some boxes never looked into to see whether she was out',
    mating: 'Some queens never seen laying or failed',
    open: 'Still open though their calendar has run out',
    lesson: 'Closed without a lesson',
  },
  gap: (what: string, batches: string) => `${what}: ${batches}.`,
  noGaps: 'Every stage of every batch was counted.',
  foot: (workbook: string, day: string, change: number) => `${workbook}, as of ${day}, change ${change}`,
  page: (page: number, pages: number) => `page ${page} of ${pages}`,
  fileName: (season: number) => `ripecell-season-${season}.pdf`,
} as const;
