/** Words on a label. Few and large; days with weekday and month in letters. */
export const labelWords = {
  mother: (mother: string) => `mother ${mother}`,
  noMother: 'mother not said',
  handsOff: (day: string) => `HANDS OFF to ${day}`,
  /** The same in two pieces, for a strip too narrow for one line. */
  handsOffStacked: ['HANDS', 'OFF'],
  handsOffDay: (day: string) => `to ${day}`,
  look: (day: string) => `look ${day}`,
  brood: (day: string) => `brood ${day}`,
  title: (batch: string) => `Labels ${batch}`,
  fileName: (batch: string) => `ripecell-labels-${batch}.pdf`,
} as const;
