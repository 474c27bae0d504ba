export const today = {
  title: 'Today',
  doToday: 'Do',
  leaveAlone: 'Leave alone',
  late: 'Late',
  early: 'Can be done early',
  tomorrow: 'Tomorrow',
  bring: 'Bring',
  week: 'The coming week',
  weekColumns: { day: 'Day', jobs: 'Jobs', minutes: 'Takes', bring: 'Bring' },
  nothingThisWeek: 'No job in the coming seven days.',
  nothingToDo: 'Nothing to do today.',
  nothingToLeave: 'Every hive and box may be opened today.',
  nothingTomorrow: 'Nothing tomorrow.',
  minutes: (n: number) => {
    if (n < 60) return `about ${n} minutes`;
    const hours = Math.round(n / 30) / 2;
    return hours === 1 ? 'about an hour' : `about ${hours} hours`;
  },
  dayN: (n: number) => {
    if (n === 0) return 'the day larvae are given';
    const days = Math.abs(n) === 1 ? '1 day' : `${Math.abs(n)} days`;
    return n > 0 ? `${days} after larvae` : `${days} before larvae`;
  },
  boxes: (codes: string, n: number) => `${codes} (${n === 1 ? '1 box' : `${n} boxes`})`,
  notChosen: 'boxes not chosen',
  until: (day: string) => `until ${day}`,
  hours: (from: number, to: number) => `${from} to ${to} h`,
  allDay: 'all day',
  dueUntil: (day: string) => `at the latest ${day}`,
  wasDue: (day: string) => `was due by ${day}`,
  anyDay: (day: string) => `any day until ${day}`,
  clash: (batch: string) => `Do not open: cells of ${batch} must be left alone.`,
  clashRemedy: (days: string) => `Free again: ${days}.`,
  open: { counts: 'Type counts', 'place-cells': 'Put cells in boxes', looks: 'Type looks', mark: 'Done' },
  /** Beside a late job: it was done in time and only now is written down. */
  doneThen: (day: string) => `Done ${day}`,
  doneToday: 'Done today',
  putOff: 'Put off',
  putOffRead: (job: string, batch: string) => `Put off: ${job}, ${batch}`,
  drop: 'Will not be done',
  dropRead: (job: string, batch: string) => `Will not be done: ${job}, ${batch}`,
  /** Above the reason: what dropping does and does not say. */
  dropTold: 'It is not called done, and no other day moves. You can take it up again on the page of the batch.',
  dropReason: 'Why, if you like',
  dropSave: 'Leave this job out',
  dropBack: 'Back',
  dropNeeded: 'It cannot be left out: the bees leave no choice. Mark it as done on its day, or close the batch.',
  /** `letters` are off where the person switched them off. */
  keys: (letters: boolean) =>
    letters
      ? 'Tab goes to a job, Up and Down to the next. There Enter opens what is typed, Space says done, S puts it off, P prints what belongs to it.'
      : 'Tab goes to a job, Up and Down to the next. There Enter opens what is typed, Space says done.',
  keyOf: { open: 'Key: Enter', done: 'Key: Space', putOff: 'Key: S' },
  yardSheet: 'Print the yard sheet',
  typeSteps: 'Type what was done',
  steps: {
    title: 'Type what was done',
    columns: { job: 'Job', batch: 'Batch', where: 'Where', due: 'Planned', now: 'Now', note: 'Note' },
    results: {
      today: 'done today',
      yesterday: 'done yesterday',
      'as-planned': 'done on the planned day',
      'not-done': 'not done',
    },
    legend: 'Keys',
    keys: 'Enter goes to the next job, Up corrects, F4 note, Ctrl+Enter is done',
    progress: (done: number, all: number) => `${done} of ${all}`,
    summary: (n: number) => `${n === 1 ? '1 job' : `${n} jobs`} done.`,
    empty: 'No job waits to be marked as done. Counts and looks have their own pages.',
    read: (job: string, batch: string, where: string, due: string) =>
      `${job}, ${batch}${where ? `, ${where}` : ''}, ${due}. Type D, Y, P or a dot.`,
  },
  calendar: {
    stale: (day: string, n: number) =>
      `Since the calendar file of ${day} ${n === 1 ? '1 event has' : `${n} events have`} changed; the phone does not know yet.`,
    makeNew: 'Make a new file',
    moved: (event: string, before: string, now: string) => `${event}: ${before} becomes ${now}`,
    added: (event: string, day: string) => `${event}: new, ${day}`,
    cancelled: (event: string) => `${event}: falls away`,
    /** Its day is the same, but its end, place or wording is not. */
    other: (event: string) => `${event}: changed`,
    more: (n: number) => `${n} more`,
  },
  emptyTitle: 'No batch is running.',
  empty: 'Start a batch, and its jobs and its quiet days appear here.',
  start: 'Start a batch',
  planSeason: 'Plan the season',
  seeDemo: 'See a filled day in the demo',
  times: {
    any: '',
    'warm-hours': 'in the warm hours',
    morning: 'in the morning',
    afternoon: 'in the afternoon',
    evening: 'towards evening',
    'before-11-or-after-16': 'before 11 h or after 16 h',
  },
} as const;
