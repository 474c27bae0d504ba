import type { Feed } from '../../model/feeding.ts';

/** What hives and mating boxes were given to eat. */
export const feeding = {
  open: 'Type feeding',
  title: 'Type feeding',
  feeds: {
    'syrup-1-1': 'sugar syrup 1:1',
    'syrup-2-1': 'sugar syrup 2:1',
    fondant: 'fondant',
    pollen: 'pollen',
    'protein-patty': 'protein patty',
    other: 'something else',
  } satisfies Record<Feed, string>,
  places: 'Fed',
  placesOf: { hives: 'hives', boxes: 'mating boxes' },
  yard: 'Yard',
  allYards: 'every yard',
  day: 'Sheet day',
  on: 'Day',
  feed: 'Feed',
  ownFeed: 'What it is',
  nameFirst: 'Say what it is, then type how much each one got.',
  nobody: 'Nothing to feed here.',
  columns: {
    place: 'Hive or box',
    where: 'Where',
    last: 'Fed last',
    amount: 'How much',
    note: 'Note',
  },
  amountIn: (unit: string) => `How much, ${unit}`,
  never: 'never',
  unknownAmount: 'not known how much',
  handsOff: (code: string, day: string) => `${code}: leave the brood alone until ${day}`,
  progress: (done: number, all: number) => `${done} of ${all}`,
  keys: 'Enter goes to the next row, Tab to the note, Up corrects, Ctrl+Enter is done. Other units may be typed: 500 g, 1.5 L. A question mark: fed, not known how much. An empty row: not fed.',
  summary: (n: number) => `${n === 1 ? '1 feeding' : `${n} feedings`} saved.`,
  several: 'The same for several at once',
  codes: 'Hives and boxes',
  codesHint: 'such as K01-K18, H12',
  giveAll: 'Write it down for all',
  caution:
    'Feed sugar only, inside the hive and towards evening, and spill nothing: a smell of syrup brings robbers. Take honey for people off first. Honey and pollen from elsewhere can carry disease. Rules for feed differ; keep to yours.',
  usual: {
    'syrup-1-1': (from: string, to: string) =>
      `A builder usually gets ${from} to ${to} a day, from 3 days before the larvae to 5 days after (common practice).`,
    fondant: (from: string, to: string) =>
      `A mini mating box usually gets ${from} to ${to} when it is filled (common practice).`,
    'protein-patty': (from: string, to: string) =>
      `A builder usually gets ${from} to ${to} for 4 to 5 days (common practice).`,
  },
  list: 'Feeding',
  none: 'No feeding written down.',
  older: (n: number) => (n === 1 ? '1 older' : `${n} older`),
  add: 'Write the feeding down',
  remove: 'Take out',
  removeOf: (day: string, feed: string) => `Take out: ${day}, ${feed}`,
} as const;
