import type { Day } from '../../../shared/kernel/day.ts';
import { addDays, earlierOf, laterOf } from '../../../shared/kernel/day.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { isOpen } from './open-steps.ts';

export type LifeStage = 'egg' | 'larva' | 'sealed' | 'ready' | 'virgin' | 'laying';

/** One stretch of the stream. `alive` is the last number counted, carried forward; forecast = nobody counted in it. */
export interface StreamBand {
  readonly stage: LifeStage;
  readonly from: Day;
  readonly to: Day;
  readonly alive: number | null;
  readonly forecast: boolean;
}

/** Where the stream narrows, on the first day of the stage: `cells` were lost, `setAside` were taken out on purpose. */
export interface StreamLoss {
  readonly on: Day;
  readonly cells: number;
  readonly setAside: number;
  readonly stage: LifeStage;
}

export interface StreamDays {
  readonly from: Day;
  readonly to: Day;
  readonly bands: readonly StreamBand[];
  readonly losses: readonly StreamLoss[];
  readonly flags: readonly { readonly step: Step; readonly on: Day; readonly done: boolean }[];
}

const FLAG_STEPS: readonly Step[] = [
  'count-taken',
  'count-sealed',
  'place-cells',
  'emergence-check',
  'first-look',
  'sealed-brood-look',
];

/**
 * The life of a batch as bands on its days, with the number alive where it was counted. `planned` is the number the
 * person meant to give; it stands for the count until there is one.
 */
export function streamDays(timetable: Timetable, tally: BatchTally, planned: number | null): StreamDays {
  const dayOf = (step: Step): Day | null => {
    const found = timetable.steps.find((one) => one.step === step);
    return found ? (found.doneOn ?? found.expected) : null;
  };
  const { emergence, larvaeGivenOn } = timetable;
  const first = timetable.steps.at(0)?.expected ?? larvaeGivenOn;
  const sealedOn = dayOf('sealed') ?? dayOf('count-sealed') ?? addDays(larvaeGivenOn, 5);
  const placedOn = laterOf(dayOf('place-cells') ?? addDays(emergence.expected, -2), sealedOn);
  const outOn = laterOf(emergence.expected, placedOn);
  const layingOn = laterOf(dayOf('first-look') ?? addDays(outOn, 12), outOn);
  const end = laterOf(dayOf('sealed-brood-look') ?? addDays(outOn, 21), layingOn);
  const counts = aliveByStage(tally, planned);
  const band = (stage: LifeStage, from: Day, to: Day): StreamBand => ({ stage, from, to, ...counts[stage] });
  const stages = [
    band('egg', earlierOf(first, larvaeGivenOn), larvaeGivenOn),
    band('larva', larvaeGivenOn, sealedOn),
    band('sealed', sealedOn, placedOn),
    band('ready', placedOn, outOn),
    band('virgin', outOn, layingOn),
    band('laying', layingOn, end),
  ];
  // A stage that is passed on one day has no band, but what was lost in it was lost.
  const bands = stages.filter((one) => one.to > one.from);
  return { from: bands[0]?.from ?? first, to: end, bands, losses: lossesOf(stages, tally), flags: flagsOf(timetable) };
}

interface Alive {
  readonly alive: number | null;
  readonly forecast: boolean;
}

/** Each stage carries the last known number; a stage nobody counted yet is a forecast. */
function aliveByStage(tally: BatchTally, planned: number | null): Record<LifeStage, Alive> {
  const placed = tally.placed > 0 ? tally.placed : null;
  const emerged = tally.emergenceKnown > 0 && tally.emergenceKnown === tally.placed ? tally.emerged : null;
  const proved = tally.matingKnown > 0 && tally.matingKnown === tally.emerged ? tally.proved : null;
  const known: readonly (readonly [LifeStage, number | null])[] = [
    ['egg', tally.given],
    ['larva', tally.taken],
    ['sealed', tally.sealed],
    ['ready', placed],
    ['virgin', emerged],
    ['laying', proved],
  ];
  let last = tally.given ?? planned;
  const alive = {} as Record<LifeStage, Alive>;
  for (const [stage, count] of known) {
    last = count ?? last;
    alive[stage] = { alive: last, forecast: count === null };
  }
  return alive;
}

/** What was lost between two counts; fewer than planned is no loss. */
function lossesOf(stages: readonly StreamBand[], tally: BatchTally): readonly StreamLoss[] {
  const counted = aliveByStage(tally, null);
  return stages.flatMap((band, index) => {
    const before = stages[index - 1];
    const alive = before ? counted[before.stage].alive : null;
    if (alive === null || band.alive === null || band.forecast) return [];
    const fewer = alive - band.alive;
    if (fewer <= 0) return [];
    const setAside = Math.min(fewer, setAsideBefore(band.stage, tally));
    return [{ on: band.from, cells: fewer - setAside, setAside, stage: band.stage }];
  });
}

/** Taken cells removed on purpose, and sealed cells not put in boxes: no loss, as in the stage rates. */
function setAsideBefore(stage: LifeStage, { taken, enteredSealing, sealed, placed }: BatchTally): number {
  if (stage === 'sealed') return taken === null || enteredSealing === null ? 0 : taken - enteredSealing;
  if (stage === 'ready') return sealed === null ? 0 : sealed - placed;
  return 0;
}

const flagsOf = (timetable: Timetable): StreamDays['flags'] =>
  timetable.steps
    .filter((step) => FLAG_STEPS.includes(step.step) && (step.doneOn !== null || isOpen(step)))
    .map((step) => ({ step: step.step, on: step.doneOn ?? step.expected, done: step.doneOn !== null }));
