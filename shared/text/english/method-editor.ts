/** The person's own copies of methods. */
export const methodEditor = {
  title: 'Methods',
  line: 'Copy a method and set its days as you do it. The last safe day for moving cells is reckoned from the bees and stays.',
  choose: 'Method',
  copyOf: (name: string, origin: string) => `${name} (own, from ${origin})`,
  name: 'Name of your copy',
  nameDefault: (origin: string) => `My ${origin.toLowerCase()}`,
  columns: { step: 'Step', builtIn: 'Built in', earliest: 'Earliest', expected: 'Expected', latest: 'Latest' },
  days: 'Days count from the day larvae are given; before it they are negative.',
  window: (earliest: number, expected: number, latest: number) =>
    earliest === latest ? `${expected}` : `${expected} (${earliest} to ${latest})`,
  day: (step: string, which: string) => `${step}, ${which}`,
  ownTitle: (builtIn: string) => `Your name for “${builtIn}”`,
  ownNote: (builtIn: string) => `Your note, shown with “${builtIn}”`,
  differences: (origin: string) => `What differs from ${origin.charAt(0).toLowerCase()}${origin.slice(1)}`,
  noDifference: 'Nothing: days, names and texts are as built in.',
  otherDays: (was: string, own: string) => `day ${was} → ${own}`,
  otherName: (title: string) => `called “${title}”`,
  addedNote: (note: string) => `note “${note}”`,
  save: 'Save as my own',
  saveChanges: 'Save my method',
  saved: 'Saved. It is offered when you start a batch.',
} as const;
