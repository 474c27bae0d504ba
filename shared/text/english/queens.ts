import type { YearColour } from '../../biology/year-colour.ts';
import type { QueenPlace } from '../../model/queen.ts';

export const queens = {
  title: 'Queens',
  empty: 'No queen has a number yet. Press Shift with a result key while typing looks, or add one here.',
  add: 'Add a queen',
  edit: 'Queen',
  columns: {
    number: 'Number',
    colour: 'Year colour',
    mother: 'Mother',
    batch: 'Batch',
    box: 'Where',
    eggs: 'First eggs',
    proved: 'Proved',
    place: 'Now',
    note: 'Note',
  },
  colours: { white: 'white', yellow: 'yellow', red: 'red', green: 'green', blue: 'blue' } satisfies Record<
    YearColour,
    string
  >,
  places: {
    'in-box': 'in her box',
    caged: 'in a cage',
    'in-hive': 'in a hive',
    given: 'given away',
    sold: 'sold',
    dead: 'dead',
    lost: 'lost',
  } satisfies Record<QueenPlace, string>,
  number: 'Number',
  numberHint: 'Birth year and number, such as 26-041',
  bornIn: 'Born in',
  line: 'Mother line',
  marked: 'Marked on',
  firstEggs: 'First eggs seen on',
  proved: 'Proved on',
  place: 'Now',
  hive: 'Hive',
  goneTo: 'To whom',
  note: 'Note',
  save: 'Save',
  filter: 'Show',
  all: 'all',
  here: 'still with me',
  count: (n: number) => (n === 1 ? '1 queen' : `${n} queens`),
} as const;
