/**
 * The usual cautions of the trade. General wording from extension and authority pages (stings: farmvina.com; disease and
 * movement: National Bee Unit legal duties, 02 NCAC 48A .0249; liquid nitrogen: COLOSS BEEBOOK 3.3.4.2). They do not
 * replace local law, labels or advice.
 */
export const cautions = {
  title: 'Take care',
  list: [
    'Stings can cause severe allergy in anyone, even after years without trouble. Know the signs: trouble breathing, swelling away from the sting, faintness. Keep a phone at hand, and your medicine if you were given one, and call for help at once. If you have reacted before, do not work alone.',
    'Full boxes weigh 20 to 40 kg. Split the load, or lift with somebody.',
    'Light a smoker only where fire is allowed, put it out fully, and never leave it or drive with it hot.',
    'Blades, hooks, hot wax and warm punches: cut away from your hand, melt wax over water, and never leave it alone.',
    'Acids and other treatments: only products allowed where you are, as their label says. Write the treatment down, and think of queens, open cells and drones before you dose.',
    'Where you suspect brood disease, move no bees, combs or boxes between hives, and tell the authority where the law asks for it. Queen rearing mixes bees from many hives: look at the donors’ brood and mites before each round.',
    'Moving or selling bees and queens may need a register, a permit, an inspection or a paper. Ask your local bee authority.',
    'Feed sugar only, inside the hive, towards evening, without spills. Honey and pollen from elsewhere can carry disease.',
    'Never leave closed boxes or caged queens in the sun or in a hot car.',
    'Mind neighbours, water, birds and wasps when you choose a place for boxes.',
    'All days are estimates. When in doubt, look one day early. Nothing here is legal or veterinary advice.',
  ],
} as const;

export const glossary = {
  title: 'Words',
  list: [
    { word: 'breeder', meaning: 'the colony whose larvae you raise queens from' },
    {
      word: 'builder',
      meaning:
        'the colony that raises the cells; a starter begins them, a finisher completes them, one colony may do both',
    },
    { word: 'batch', meaning: 'one set of cells raised together' },
    { word: 'bar', meaning: 'a bar, comb edge or strip that carries cells' },
    { word: 'given', meaning: 'cells with larvae offered to the builder' },
    { word: 'taken', meaning: 'cells the builder accepted and feeds' },
    { word: 'sealed', meaning: 'cells closed with wax' },
    { word: 'hands off', meaning: 'days on which a hive or box must not be opened, shaken or moved' },
    { word: 'mating box', meaning: 'a small hive in which one queen is mated' },
    { word: 'look', meaning: 'opening a hive or box once, and what you saw' },
    { word: 'laying', meaning: 'eggs or young brood of the new queen were seen' },
    { word: 'proved', meaning: 'sealed worker brood was seen: the queen is mated and lays well' },
    { word: 'drone-layer', meaning: 'a queen whose eggs in worker cells give only drones' },
    { word: 'mother line', meaning: 'a queen and her daughters, their daughters, and so on' },
    {
      word: 'check',
      meaning: 'a job that follows from one thing you did, such as looking for eggs after bringing a queen in',
    },
    { word: 'slip', meaning: 'a day that moved, and why' },
  ],
} as const;

export const help = {
  search: 'Find in help',
  searchHint: 'a word, a key, or anything in its meaning',
  found: (n: number) => (n === 1 ? '1 found' : `${n} found`),
  nothing: 'Nothing of that name. Try fewer letters.',
  title: 'Help and glossary',
  keysTitle: 'Keys',
  keys: [
    ['Ctrl+1 to 9', 'the places of the side bar'],
    ['Ctrl+K', 'go to a box, hive, queen, batch or page, or run a command'],
    ['Ctrl+N', 'start a batch'],
    ['Ctrl+E', 'type looks'],
    ['Ctrl+B', 'put cells in boxes'],
    ['Ctrl+R', 'say what was really seen'],
    ['Ctrl+L', 'labels'],
    ['Ctrl+P', 'print this view; from Today also the yard sheet'],
    ['Ctrl+Z', 'take the last change back; in a field, the letters just typed'],
    ['Ctrl+Y, Ctrl+Shift+Z', 'do it again'],
    ['G, S, H, C, D, L', 'on a queen’s page: give, sell, into a hive, cage, dead, lost; Settings can switch them off'],
    [
      'Enter, Space, S, P',
      'on a job of Today (Tab goes there): open, done today, put off, print what belongs to it; Up and Down go to the next job; Settings can switch the letters off',
    ],
    ['Shift+Left, Shift+Right, M', 'on a planned batch of the season’s plan: a day earlier, a day later, another day'],
    ['Alt+Left, Alt+Right', 'back and forward'],
    ['F1', 'this page'],
  ],
  figuresTitle: 'How the figures are reckoned',
  figures: [
    'A share always stands beside the counts it rests on. “Not counted” is not zero: a stage without both counts is left out.',
    'A batch still running is no loss: it enters a figure once its counts are there.',
    'Cells removed on purpose, and sealed cells not put in boxes, leave the figure of the next stage.',
    'Of a hive’s scores gentleness and calmness are means and of swarming the lowest counts; fewer than four are said to be too few.',
    'A box found without a queen counts as emerged unless its cell was seen dead or torn down.',
    'The range beside a share in the table is Wilson’s: about 9 times in 10 the true share lies in it, if all cells were alike. The picture below the table allows for batches that differ, and so do the words under it.',
  ],
} as const;

export const classroom = {
  title: 'Class',
  line: 'The timetable of any method, from a made-up first day, with what, why and caution for each step. No real data is used.',
  method: 'Method',
  comb: 'Comb',
  builderType: 'Builder arranged',
  day: 'Day larvae are given',
  print: 'Print this timetable',
  columns: { day: 'Day', n: 'Day after larvae', step: 'Step', what: 'What we do', why: 'Why', caution: 'Caution' },
  handsOff: 'hands off',
  sources: 'Sources of the days',
  smallNumbers: {
    title: 'Small numbers',
    line: 'Six batches by the same hand, the same method and the same luck for all. Which was the best? Type other numbers and see how far each share is drawn towards the rest.',
    of: 'Larvae given to each batch',
    unclear: 'Type whole numbers: 1 to 200 larvae, and no more taken than given.',
    columns: {
      taken: 'Taken',
      plain: 'Plain share',
      byHand: 'Drawn to the mean, by hand',
      evened: 'The same, evened scale',
      model: 'By this workbook, 9 times in 10',
    },
    takenOf: (row: number) => `Taken, batch ${row}`,
    more: 'One batch more',
    fewer: 'One batch fewer',
    lesson: (kept: number | null) =>
      kept === null
        ? 'The rule by hand needs at least four batches of the same size.'
        : `By hand: take the mean of all shares, and keep only ${Math.round(100 * kept)} of 100 of each one's distance from it (James and Stein's rule). The best batch was lucky too, and the worst unlucky; the next ones will lie nearer the middle.`,
    ranges: {
      title: 'Other ways to draw the range',
      batch: 'Taken',
      model: 'This workbook',
      ways: { wilson: 'Wilson', jeffreys: 'Jeffreys', exact: 'Exact' },
      takenOf: (taken: string, of: string) => `${taken} of ${of}`,
      why: 'Wilson, Jeffreys and the exact way look at one batch alone and count every cell as a throw of the same coin. Wilson and Jeffreys hold the true share 9 times in 10 on average; the exact way holds it at least that often and is wider for it. This workbook also allows for batches that differ, which makes a range wider, and lets the other batches speak, which moves it towards them and makes it narrower.',
    },
  },
} as const;
