/** What an evening's typing changed in the jobs ahead. */
export const evening = {
  title: 'What this changes',
  nothing: 'No job and no hands-off time changes.',
  appeared: 'New',
  vanished: 'Done, or no longer needed',
  fewer: 'Still to do',
  shut: 'Leave alone from now on',
  freed: 'May be opened again',
  proposed: 'Could be done',
  job: (what: string, batch: string, where: string, when: string) =>
    `${what}, ${batch}${where ? `, ${where}` : ''} (${when})`,
  expected: (day: string) => `expected ${day}`,
  leave: (what: string, day: string) => `${what} until ${day}`,
  backToToday: 'See today',
  undoAll: 'Undo all',
  takenBack: (n: number) =>
    `${n === 1 ? '1 change' : `${n} changes`} taken back. Ctrl+Y does ${n === 1 ? 'it' : 'them'} again, one at a time.`,
} as const;
