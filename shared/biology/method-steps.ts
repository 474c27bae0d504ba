import type { Comb, Method } from '../model/method.ts';
import type { Step } from '../model/step.ts';
import { TARGET_LARVA_HOURS } from './development.ts';
import {
  BEEBOOK_GRAFTING,
  BEEBOOK_LARVAE,
  CAGED_LAYING,
  CELL_PUNCH,
  COMB_STRIPS,
  CUSTOM,
  CUSTOM_DERIVED,
  CUT_COMB,
  DOUBLE_TRANSFER,
  EMERGENCY_DERIVED,
  FLAT_COMB,
  SWARM_CELLS,
} from './sources.ts';
import type { StepRow } from './step-row.ts';
import { CELL_STEPS, EMERGENCE_STEP, MATING_STEPS, PLACE_STEP, QUIET_STEP } from './tail-steps.ts';

/** How a method comes by its larvae, and what that means for the count of days. */
export interface MethodTable {
  /** `given`: a person gives larvae to a builder. The others: bees begin cells in their own colony. */
  readonly start: 'given' | 'queen-lost' | 'own-cells';
  /**
   * Steps whose day fixes day 0, the most binding first. Larvae really given beat the day their comb went in.
   */
  readonly fixedBy: readonly Step[];
  /** Age of the larvae when given, hours since hatching, where nothing else is noted; null where bees choose. */
  readonly larvaHours: readonly [number, number] | null;
  readonly takesBuilder: boolean;
  readonly takesBoxes: boolean;
  readonly head: readonly StepRow[];
  readonly tail: readonly StepRow[];
}

const breederJob = (row: Pick<StepRow, 'step' | 'days' | 'minutes' | 'source'> & Partial<StepRow>): StepRow => ({
  kind: 'job',
  place: 'breeder',
  base: 'larvae',
  timeOfDay: 'any',
  hardness: 'must',
  materials: [],
  confidence: 'medium',
  ...row,
});
const giveLarvae = (changes: Pick<StepRow, 'minutes' | 'source'> & Partial<StepRow>): StepRow => ({
  step: 'give-larvae',
  kind: 'job',
  place: 'builder',
  base: 'larvae',
  days: [0, 0, 0],
  timeOfDay: 'warm-hours',
  hardness: 'must',
  materials: ['transfer tool', 'cups and bar', 'damp cloth'],
  confidence: 'high',
  ...changes,
});
const insertComb = (changes: Pick<StepRow, 'source'> & Partial<StepRow>): StepRow =>
  breederJob({ step: 'insert-frame', days: [-5, -4, -4], minutes: 15, materials: ['empty worker comb'], ...changes });

const GIVEN_TAIL = [...CELL_STEPS, QUIET_STEP, PLACE_STEP, EMERGENCE_STEP, ...MATING_STEPS];
const CHOSEN_LARVAE = [TARGET_LARVA_HOURS.youngest, TARGET_LARVA_HOURS.oldest] as const;
/** On a cut edge or a laid comb stand larvae from just hatched to a day old. */
const EDGE_LARVAE = [0, TARGET_LARVA_HOURS.oldest] as const;

const given = (table: Pick<MethodTable, 'fixedBy' | 'larvaHours' | 'head'>): MethodTable => ({
  start: 'given',
  takesBuilder: true,
  takesBoxes: true,
  tail: GIVEN_TAIL,
  ...table,
});

/** The breeder is fed three days before its comb goes in, so that the comb is drawn and laid at once. */
const feedBreeder = (days: StepRow['days']): StepRow =>
  breederJob({
    step: 'feed-start',
    days,
    minutes: 10,
    materials: ['sugar syrup', 'pollen'],
    timeOfDay: 'evening',
    hardness: 'should',
    source: CUSTOM,
    confidence: 'low',
  });

const CUT_EDGE = giveLarvae({
  minutes: 40,
  materials: ['sharp knife', 'damp cloth'],
  source: CUT_COMB,
  confidence: 'medium',
});

const SEALED_EVENT: StepRow = {
  // A cell found sealed was laid 7.5 to 8.5 days before; day 0 of the count is put 4 days before sealing.
  step: 'sealed',
  kind: 'event',
  place: 'builder',
  base: 'larvae',
  days: [4, 4, 4],
  timeOfDay: 'any',
  hardness: 'must',
  minutes: null,
  materials: [],
  source: SWARM_CELLS,
  confidence: 'medium',
};

/** Emergency queens come over about a week, so the wait for eggs is reckoned wider: 20 to 28 days after the loss. */
const EMERGENCY_MATING: readonly StepRow[] = MATING_STEPS.map((row) => {
  if (row.step === 'hands-off-mating') return { ...row, days: [2, 2, 9], source: EMERGENCY_DERIVED, confidence: 'low' };
  if (row.step === 'first-look') return { ...row, days: [8, 12, 16], source: EMERGENCY_DERIVED, confidence: 'low' };
  if (row.step === 'give-up') return { ...row, days: [23, 23, 28], source: EMERGENCY_DERIVED, confidence: 'low' };
  return row;
});

/** Every method's own table. `cut-comb-edge` has one for drawn comb and one for foundation. */
export const METHOD_TABLES: Readonly<Record<Exclude<Method, 'cut-comb-edge'>, MethodTable>> & {
  readonly 'cut-comb-edge': Readonly<Record<Comb, MethodTable>>;
} = {
  'larva-grafting': given({
    fixedBy: ['give-larvae', 'insert-frame'],
    larvaHours: CHOSEN_LARVAE,
    head: [
      insertComb({ source: BEEBOOK_LARVAE, hardness: 'should', confidence: 'high' }),
      giveLarvae({ minutes: 60, source: BEEBOOK_GRAFTING }),
    ],
  }),
  'larva-grafting-double': given({
    fixedBy: ['give-larvae', 'first-transfer', 'insert-frame'],
    larvaHours: CHOSEN_LARVAE,
    head: [
      insertComb({ source: BEEBOOK_LARVAE, days: [-6, -5, -4], hardness: 'should', confidence: 'high' }),
      // First larvae lie 18 to 24 hours and are then replaced.
      breederJob({
        step: 'first-transfer',
        place: 'builder',
        days: [-1, -1, -1],
        minutes: 60,
        timeOfDay: 'warm-hours',
        materials: ['transfer tool', 'cups and bar', 'damp cloth'],
        source: DOUBLE_TRANSFER,
      }),
      giveLarvae({ minutes: 75, source: DOUBLE_TRANSFER, confidence: 'medium' }),
    ],
  }),
  'cut-comb-edge': {
    drawn: given({
      fixedBy: ['give-larvae', 'insert-frame'],
      larvaHours: EDGE_LARVAE,
      head: [feedBreeder([-8, -7, -5]), insertComb({ source: CUT_COMB }), CUT_EDGE],
    }),
    foundation: given({
      fixedBy: ['give-larvae', 'insert-frame'],
      larvaHours: EDGE_LARVAE,
      // Three to four days to draw the strips, then four to the first larvae.
      head: [
        feedBreeder([-11, -10, -8]),
        insertComb({ source: CUT_COMB, days: [-8, -7, -7], materials: ['starter-strip frame', 'sugar syrup'] }),
        CUT_EDGE,
      ],
    }),
  },
  'comb-strip': given({
    fixedBy: ['give-larvae', 'insert-frame'],
    larvaHours: EDGE_LARVAE,
    head: [
      insertComb({ source: COMB_STRIPS }),
      giveLarvae({
        minutes: 60,
        materials: ['sharp knife', 'beeswax', 'damp cloth'],
        source: COMB_STRIPS,
        confidence: 'medium',
      }),
    ],
  }),
  'flat-comb': given({
    fixedBy: ['give-larvae', 'insert-frame'],
    larvaHours: EDGE_LARVAE,
    head: [
      insertComb({ source: FLAT_COMB }),
      giveLarvae({
        minutes: 45,
        materials: ['sharp knife', 'spacer frame', 'damp cloth'],
        source: FLAT_COMB,
        confidence: 'medium',
      }),
    ],
  }),
  'cell-punch': given({
    fixedBy: ['give-larvae', 'insert-frame'],
    larvaHours: CHOSEN_LARVAE,
    head: [
      insertComb({ source: CELL_PUNCH }),
      giveLarvae({
        minutes: 60,
        materials: ['cell punch', 'beeswax', 'damp cloth'],
        source: CELL_PUNCH,
        confidence: 'medium',
      }),
    ],
  }),
  'caged-laying-plugs': given({
    fixedBy: ['give-larvae', 'cage-queen', 'insert-frame'],
    larvaHours: EDGE_LARVAE,
    head: [
      breederJob({
        step: 'insert-frame',
        days: [-6, -5, -5],
        minutes: 15,
        materials: ['laying cage'],
        source: CAGED_LAYING,
        hardness: 'should',
        confidence: 'high',
      }),
      breederJob({
        step: 'cage-queen',
        days: [-4, -4, -4],
        minutes: 30,
        materials: ['laying cage'],
        source: CAGED_LAYING,
        confidence: 'high',
      }),
      // 12 to 24 hours after caging; 36 in one course.
      breederJob({ step: 'release-queen', days: [-4, -3, -2], minutes: 15, source: CAGED_LAYING, confidence: 'high' }),
      // Sources say 4 days and 5 days after caging: laying often starts late.
      giveLarvae({ days: [0, 0, 1], minutes: 45, materials: ['cups and bar', 'damp cloth'], source: CAGED_LAYING }),
    ],
  }),
  'emergency-cells': {
    start: 'queen-lost',
    fixedBy: ['remove-queen'],
    larvaHours: null,
    takesBuilder: false,
    takesBoxes: true,
    head: [
      breederJob({
        step: 'remove-queen',
        place: 'builder',
        days: [0, 0, 0],
        minutes: 45,
        materials: ['queen cage'],
        source: EMERGENCY_DERIVED,
      }),
      // Cells sealed by now were begun over old larvae and are destroyed; one or two well-fed open ones are kept.
      breederJob({
        step: 'thin-cells',
        place: 'builder',
        days: [4, 4, 5],
        minutes: 30,
        timeOfDay: 'warm-hours',
        hardness: 'should',
        source: CUSTOM_DERIVED,
      }),
      { ...SEALED_EVENT, days: [1, 4, 8], source: EMERGENCY_DERIVED },
    ],
    tail: [
      QUIET_STEP,
      { ...PLACE_STEP, hardness: 'may', source: EMERGENCY_DERIVED, confidence: 'medium' },
      EMERGENCE_STEP,
      ...EMERGENCY_MATING,
    ],
  },
  'swarm-cells': {
    start: 'own-cells',
    fixedBy: ['sealed'],
    larvaHours: null,
    takesBuilder: false,
    takesBoxes: true,
    head: [
      SEALED_EVENT,
      // Cells left alone may send out a second swarm from 7 days after sealing.
      breederJob({
        step: 'thin-cells',
        place: 'builder',
        days: [4, 5, 10],
        minutes: 30,
        timeOfDay: 'warm-hours',
        hardness: 'should',
        source: SWARM_CELLS,
      }),
    ],
    tail: [QUIET_STEP, { ...PLACE_STEP, source: SWARM_CELLS, confidence: 'medium' }, EMERGENCE_STEP, ...MATING_STEPS],
  },
  'supersedure-cells': {
    start: 'own-cells',
    fixedBy: ['sealed'],
    larvaHours: null,
    takesBuilder: false,
    takesBoxes: false,
    head: [SEALED_EVENT],
    tail: [
      QUIET_STEP,
      { ...PLACE_STEP, hardness: 'may', source: SWARM_CELLS, confidence: 'medium' },
      EMERGENCE_STEP,
      // Eggs 9 to 14 days after emergence; the old queen may go on laying beside her daughter.
      ...MATING_STEPS.map((row): StepRow => (row.step === 'first-look' ? { ...row, days: [9, 12, 14] } : row)),
    ],
  },
};

/** The table of a method; cut-comb-edge without a word about its comb is taken as drawn. */
export function methodTable(method: Method, comb: Comb | null): MethodTable {
  return method === 'cut-comb-edge' ? METHOD_TABLES[method][comb ?? 'drawn'] : METHOD_TABLES[method];
}
