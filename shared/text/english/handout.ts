/** Words on the timetable for the class or the wall. */
export const handout = {
  title: (method: string) => `${method}: timetable`,
  ruler:
    'Every column is a day, numbered from the day the larvae are given. Hatched: hands off. Framed: queens may emerge. Marks on top: something to do.',
  /** On these days, counted from the larvae given. */
  stageDays: (stage: string, from: number, to: number) => `${stage} from day ${from} to day ${to}`,
  bees: {
    egg: 'eggs, then young larvae',
    larva: 'nurse bees feed larvae',
    sealed: 'sealed, larva turns queen',
    ready: 'ripe cells, queens stir',
    virgin: 'virgins ripen, fly, mate',
    laying: 'mated queens lay',
  },
  columns: {
    day: 'date',
    number: 'day',
    bees: 'what the bees do',
    step: 'step',
    what: 'what we do',
    notes: 'your own notes',
  },
  start: (day: string) => `Larvae given on ${day}.`,
  noStart: 'Day 0 is the day the larvae are given.',
  caution:
    'All days are estimates: when in doubt, look one day early. Stings can cause severe allergy in anyone: keep a phone at hand.',
  sources: (list: string) => `Sources of the days: ${list}`,
  page: (page: number, pages: number) => `page ${page} of ${pages}`,
  fileName: (method: string) => `ripecell-timetable-${method}.pdf`,
  variant: 'For',
  variants: { dates: 'this first day', 'day-numbers': 'any year, day numbers only', gaps: 'an exercise with gaps' },
  save: 'Save as PDF',
} as const;
