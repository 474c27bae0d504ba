import type { Comb, Method } from '../../shared/model/method.ts';

/** The made-up yard: invented from end to end; any likeness to a real one is chance. */
export const HELD_DAY = '2026-05-21';
export const SEED = 20_260_521;

/** Away for a long weekend, and drones begun in April. */
export const PERSON = {
  awayDays: ['2026-05-30', '2026-05-31', '2026-06-01'],
  firstDroneEggsOn: '2026-04-02',
};

/** Who asked for queens of this year. */
export const WISHES = [
  {
    id: 'demo-wish-own',
    forWhom: null,
    queens: 4,
    wantedOn: '2026-06-14',
    note: 'To replace queens in their third year.',
  },
  { id: 'demo-wish-club', forWhom: 'Club apiary', queens: 5, wantedOn: '2026-06-20', note: null },
  {
    id: 'demo-wish-valley',
    forWhom: 'A neighbour up the valley',
    queens: 2,
    wantedOn: '2026-07-04',
    note: 'Gentle ones, if there is a choice.',
  },
] as const;

/** Weather at the boxes while the first queens of the year fly: cold after the ice saints, then warm. */
export const WEATHER = [
  { day: '2026-05-14', maxCelsius: 17, windKmh: 12, rain: true, flyingHours: 0 },
  { day: '2026-05-15', maxCelsius: 15.5, windKmh: 20, rain: true, flyingHours: 0 },
  { day: '2026-05-16', maxCelsius: 18.5, windKmh: 15, rain: false, flyingHours: 1 },
  { day: '2026-05-17', maxCelsius: 21, windKmh: 10, rain: false, flyingHours: 4 },
  { day: '2026-05-18', maxCelsius: 23, windKmh: 8, rain: false, flyingHours: 5 },
  { day: '2026-05-19', maxCelsius: 24, windKmh: 14, rain: false, flyingHours: 4 },
] as const;

export const YARDS = [
  { id: 'demo-yard-orchard', name: 'Orchard', note: 'Behind the pear trees; sun until three.' },
  { id: 'demo-yard-mill', name: 'Mill meadow', note: 'By the old mill. Windy in April.' },
] as const;

export const HIVES = [
  { code: 'H03', name: 'Anna', line: 'Anna', yard: 'Orchard', place: 'row 1, place 3', roles: ['breeder'] },
  { code: 'H07', name: 'Berta', line: 'Berta', yard: 'Orchard', place: 'row 1, place 7', roles: ['breeder'] },
  { code: 'H15', name: 'Clara', line: 'Clara', yard: 'Mill meadow', place: 'gate', roles: ['breeder'] },
  { code: 'H02', name: null, line: 'Anna', yard: 'Orchard', place: 'row 2, place 1', roles: ['builder'] },
  { code: 'H04', name: null, line: 'Berta', yard: 'Orchard', place: 'row 2, place 3', roles: ['builder'] },
  { code: 'H09', name: null, line: 'Berta', yard: 'Mill meadow', place: 'hedge, place 2', roles: ['builder'] },
  { code: 'H12', name: null, line: 'Clara', yard: 'Mill meadow', place: 'hedge, place 4', roles: ['builder'] },
  { code: 'H18', name: 'Dora', line: 'Dora', yard: 'Mill meadow', place: 'pond', roles: ['drone-mother'] },
] as const;

export const BOXES = [
  { codes: 'K01-K12', yard: 'Orchard', row: 'fence', type: 'mini' },
  { codes: 'K13-K16', yard: 'Orchard', row: 'shed', type: 'half-frame' },
  { codes: 'M01-M08', yard: 'Mill meadow', row: 'willow', type: 'mini' },
] as const;

export interface BatchStory {
  readonly method: Method;
  readonly comb: Comb | null;
  readonly larvaeOn: string;
  readonly breeder: string;
  readonly builder: string;
  readonly cells: number;
  readonly boxes: string;
  /** Mean shares the batch is drawn around. */
  readonly take: number;
  readonly mating: number;
  readonly note: string | null;
  readonly lesson: string | null;
  readonly practice?: boolean;
  /** The check for the builder's own cells was forgotten. */
  readonly forgotCheck?: boolean;
  /** Why nobody looked for the builder's own cells. */
  readonly droppedCheck?: string;
  /** Cells that a virgin tore down before they were taken. */
  readonly tornDown?: number;
}

const grafting = (story: Omit<BatchStory, 'method' | 'comb'>): BatchStory => ({
  method: 'larva-grafting',
  comb: null,
  ...story,
});
const cutComb = (story: Omit<BatchStory, 'method' | 'comb'>): BatchStory => ({
  method: 'cut-comb-edge',
  comb: 'drawn',
  ...story,
});

/** Two full seasons. H04 is the strong builder and H12 the weak one; June mates better than early May. */
export const PAST_BATCHES: readonly BatchStory[] = [
  cutComb({
    larvaeOn: '2024-05-07',
    breeder: 'H03',
    builder: 'H02',
    cells: 10,
    boxes: 'K01-K07',
    take: 0.75,
    mating: 0.65,
    note: null,
    lesson: 'A week too early: cold nights in the boxes.',
  }),
  grafting({
    larvaeOn: '2024-05-21',
    breeder: 'H03',
    builder: 'H04',
    cells: 20,
    boxes: 'K08-K16',
    take: 0.8,
    mating: 0.75,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2024-06-04',
    breeder: 'H07',
    builder: 'H12',
    cells: 20,
    boxes: 'M01-M08',
    take: 0.55,
    mating: 0.75,
    note: 'H12 light on pollen.',
    lesson: 'Feed the builder before, not after.',
  }),
  cutComb({
    larvaeOn: '2024-06-18',
    breeder: 'H07',
    builder: 'H04',
    cells: 12,
    boxes: 'K01-K08',
    take: 0.8,
    mating: 0.8,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2024-06-25',
    breeder: 'H15',
    builder: 'H09',
    cells: 24,
    boxes: 'K09-K16',
    take: 0.7,
    mating: 0.8,
    note: null,
    lesson: null,
  }),
  cutComb({
    larvaeOn: '2024-07-09',
    breeder: 'H15',
    builder: 'H02',
    cells: 10,
    boxes: 'M01-M05',
    take: 0.7,
    mating: 0.7,
    note: 'For the club evening.',
    lesson: null,
    practice: true,
  }),
  cutComb({
    larvaeOn: '2025-05-13',
    breeder: 'H03',
    builder: 'H04',
    cells: 12,
    boxes: 'K01-K08',
    take: 0.85,
    mating: 0.7,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2025-05-20',
    breeder: 'H07',
    builder: 'H02',
    cells: 20,
    boxes: 'K09-K16',
    take: 0.75,
    mating: 0.75,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2025-05-27',
    breeder: 'H07',
    builder: 'H12',
    cells: 20,
    boxes: '',
    take: 0,
    mating: 0,
    note: 'Not one taken. A virgin was running in H12.',
    lesson: 'Shake every comb of the builder and look for cells before giving larvae.',
    droppedCheck: 'Not one taken, nothing to guard.',
    tornDown: 20,
  }),
  grafting({
    larvaeOn: '2025-06-10',
    breeder: 'H03',
    builder: 'H09',
    cells: 24,
    boxes: 'M01-M08',
    take: 0.75,
    mating: 0.8,
    note: null,
    lesson: null,
  }),
  cutComb({
    larvaeOn: '2025-06-17',
    breeder: 'H15',
    builder: 'H02',
    cells: 10,
    boxes: 'K01-K06',
    take: 0.75,
    mating: 0.8,
    note: null,
    lesson: 'Edge from drawn comb gave larger cells than strips.',
  }),
  grafting({
    larvaeOn: '2025-06-24',
    breeder: 'H15',
    builder: 'H04',
    cells: 24,
    boxes: 'K07-K16',
    take: 0.85,
    mating: 0.8,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2025-07-08',
    breeder: 'H03',
    builder: 'H12',
    cells: 16,
    boxes: 'M01-M06',
    take: 0.6,
    mating: 0.6,
    note: 'Wasps at the mill.',
    lesson: 'Narrow the doors by the first of July.',
  }),
];

/**
 * This season on the held day: boxes waiting for their first look, boxes whose queens fly, ripe cells to place, a builder
 * that must be left alone, and a set to count.
 */
export const RUNNING_BATCHES: readonly BatchStory[] = [
  cutComb({
    larvaeOn: '2026-04-27',
    breeder: 'H03',
    builder: 'H02',
    cells: 12,
    boxes: 'K01-K09',
    take: 0.85,
    mating: 0.75,
    note: 'Warm week; the first set of the year.',
    lesson: null,
  }),
  grafting({
    larvaeOn: '2026-05-04',
    breeder: 'H03',
    builder: 'H04',
    cells: 16,
    boxes: 'K10-K14',
    take: 0.8,
    mating: 0.75,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2026-05-11',
    breeder: 'H07',
    builder: 'H09',
    cells: 20,
    boxes: '',
    take: 0.75,
    mating: 0.75,
    note: null,
    lesson: null,
    forgotCheck: true,
  }),
  cutComb({
    larvaeOn: '2026-05-14',
    breeder: 'H15',
    builder: 'H02',
    cells: 12,
    boxes: '',
    take: 0.8,
    mating: 0.75,
    note: null,
    lesson: null,
  }),
  grafting({
    larvaeOn: '2026-05-20',
    breeder: 'H15',
    builder: 'H04',
    cells: 20,
    boxes: '',
    take: 0.8,
    mating: 0.75,
    note: null,
    lesson: null,
  }),
];

/** Where the queens of past seasons went. */
export const QUEENS_WENT = [
  { place: 'in-hive', goneTo: null, note: 'Requeened one of our own.' },
  { place: 'given', goneTo: 'Club apiary', note: null },
  { place: 'sold', goneTo: 'A neighbour up the valley', note: null },
  { place: 'in-hive', goneTo: null, note: 'Wintered on five combs.' },
  { place: 'dead', goneTo: null, note: 'Superseded in her first summer.' },
] as const;
