/** The slip dialog: what a fact does to the dates, before it is saved. */
export const slip = {
  title: (batch: string) => `${batch}: what this moves`,
  nothing: 'No open day moves.',
  moves: (n: number) => (n === 1 ? 'One open step gets another day.' : `${n} open steps get other days.`),
  columns: { step: 'Step', was: 'Was', becomes: 'Becomes' },
  done: 'done, stays',
  stays: 'stays',
  none: 'none',
  by: (days: number) => (days === 0 ? 'other window' : days > 0 ? `+${days}` : `−${-days}`),
  labels: (n: number, codes: string) =>
    `${n === 1 ? 'One printed label' : `${n} printed labels`} will be out of date: ${codes}. Print them again under Print.`,
  entries: (n: number) =>
    `${n === 1 ? 'One entry' : `${n} entries`} in the calendar file you made will be out of date. Make it again under Files.`,
  contradiction: 'These would exclude each other; the earlier, safer day is used until you take one back:',
  fact: {
    step: (title: string, day: string) => `“${title}” on ${day}`,
    age: (from: number, to: number, day: string) => `larvae ${from} to ${to} hours old on ${day}`,
    seen: (what: string, day: string) => `${what} on ${day}`,
  },
  back: 'Go back',
  confirm: 'Save, and let the days move',
} as const;
