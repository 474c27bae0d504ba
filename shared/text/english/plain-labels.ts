import type { PlainLabelKind } from '../../contract/plain-labels.ts';

/** Words on labels for bars, cages and queens, and for choosing them. */
export const plainLabels = {
  section: 'Labels for bars, cages and queens',
  what: 'Labels for',
  kinds: { bars: 'bars', cages: 'cages', queens: 'queens' } satisfies Record<PlainLabelKind, string>,
  batch: 'Batch',
  count: (n: number) => (n === 1 ? '1 label' : `${n} labels`),
  none: {
    bars: 'This batch has no bar yet.',
    cages: 'No cell of this batch was counted, and none is planned, so there is no cage to label.',
    queens: 'No queen with a number is with you.',
  } satisfies Record<PlainLabelKind, string>,
  bar: (number: number) => `bar ${number}`,
  cage: (number: number) => `cage ${number}`,
  line: (line: string) => `line ${line}`,
  given: (day: string) => `given ${day}`,
  emerges: (day: string) => `out from ${day}`,
  eggs: (day: string) => `eggs ${day}`,
  proved: (day: string) => `proved ${day}`,
  title: (kind: string) => `Labels for ${kind}`,
  fileName: (kind: string, what: string) => `ripecell-labels-${kind}-${what}.pdf`,
  save: 'Save these labels',
  codeNeeds: (mm: number) =>
    `The square code needs ${mm} mm of room and would be too fine to read here. Choose a larger label, or leave it out.`,
  unprintable:
    'Neither of the fonts has these letters; they will be printed as “?”. Write the name with other letters where that will not do.',
  unprintableOn: (label: string, letters: readonly string[]) => `label ${label}: ${letters.join(' ')}`,
} as const;
