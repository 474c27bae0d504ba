import { type CountSummary, chanceOfAtLeast, summariseCount } from './count-summary.ts';
import { type FunnelStage, funnel, funnelSum, type StageTable, stageTable } from './funnel.ts';
import { boxesNeeded, larvaeNeeded, MOST_LARVAE } from './how-many.ts';
import { meanRate, type RateNode } from './rate-nodes.ts';
import { sharedFunnel } from './shared-funnel.ts';

/** "I want so many laying queens, so surely, from so many batches." */
export interface QueenPlanAsk {
  /** What is known of the rates of take, sealing, emergence and mating, in this order. */
  readonly stages: readonly [readonly RateNode[], readonly RateNode[], readonly RateNode[], readonly RateNode[]];
  readonly wanted: number;
  /** 0 to 1. */
  readonly chance: number;
  /** Batches of the same size, whose unknown rates are the same. */
  readonly batches: number;
  /** The most cells one builder finishes; each batch has its own. null = no limit. */
  readonly cellsPerBuilder: number | null;
  /** Mating boxes for all batches together; null = as many as it takes. */
  readonly boxes: number | null;
  /** Larvae a batch if the person has settled on them; null = find the fewest. */
  readonly larvaeEach: number | null;
}

/** A number of larvae with the fewest boxes that still give the chance asked for. */
export interface PlanRow {
  readonly larvaeEach: number;
  readonly boxes: number | null;
  readonly chance: number;
}

export interface QueenPlan {
  /** null when even the most larvae do not give the chance asked for. */
  readonly larvaeEach: number | null;
  /** Chance of at least as many as wanted with the larvae found, settled on, or at most possible. */
  readonly chance: number;
  /** What limits the answer when it cannot be reached: lifting it alone would do. */
  readonly heldBackBy: readonly ('builder' | 'boxes')[];
  readonly boxes: number | null;
  /** Queens laying in the end, out of the boxes there are or should be. */
  readonly laying: CountSummary;
  /** Expected on the way of all batches: larvae given, cells taken, sealed, queens emerged and laying out of the boxes. */
  readonly onTheWay: readonly number[];
  /** The same with 10, 20 and 30 of 100 more larvae: fewer boxes may do. */
  readonly rows: readonly PlanRow[];
}

/** No batch is planned larger than this. */
const MOST_EACH = 150;
const NOISE = 1e-9;
const MORE_LARVAE = [1.1, 1.2, 1.3] as const;

/**
 * How many larvae and boxes it takes. The chance never falls as larvae or boxes rise. For one batch a single pass back from
 * the queens finds the larvae; several batches, and boxes, are found by halving.
 */
export function queenPlan(ask: QueenPlanAsk): QueenPlan {
  const most = Math.min(MOST_EACH, Math.floor(MOST_LARVAE / ask.batches));
  const reach = reachOf(ask);
  const enough = (each: number, boxes: number | null) => reach(each, boxes) >= ask.chance - NOISE;
  const settled = ask.larvaeEach ?? fewestLarvae(ask, most, (n) => enough(n, ask.boxes));
  const each = settled ?? most;
  const boxesFor = (larvae: number) =>
    enough(larvae, ask.boxes)
      ? fewest(fewestBoxes(ask, larvae), ask.batches * larvae, (boxes) => enough(larvae, boxes))
      : null;
  const boxes = boxesFor(each);
  // What is promised is promised of the boxes that are named: with more of them more would lay.
  const ready = ask.boxes ?? boxes;
  const laying = summariseCount(layingOf(ask, each, ready));
  return {
    larvaeEach: settled,
    chance: reach(each, ready),
    heldBackBy: settled === null ? heldBackBy(ask, most) : [],
    boxes,
    laying,
    onTheWay: [...wayToBoxes(ask, each, ready), laying.mean],
    rows:
      settled === null
        ? []
        : MORE_LARVAE.map((factor) => Math.ceil(each * factor))
            .filter((larvae) => larvae <= most)
            .map((larvaeEach) => ({ larvaeEach, boxes: boxesFor(larvaeEach), chance: reach(larvaeEach, ask.boxes) })),
  };
}

/** Larvae given, cells taken and sealed, queens emerged: never more than boxes, since a cell without one goes no further. */
function wayToBoxes({ batches, stages }: QueenPlanAsk, each: number, boxes: number | null): readonly number[] {
  const [take, sealing, emergence] = stages.map(meanRate);
  const given = each * batches;
  const taken = given * (take ?? 1);
  const sealed = taken * (sealing ?? 1);
  return [given, taken, sealed, Math.min(sealed, boxes ?? sealed) * (emergence ?? 1)];
}

/** Most plans need fewer larvae than this; tables are only made larger when they must be. */
const USUAL_LARVAE = 50;

function fewestLarvae(ask: QueenPlanAsk, most: number, enough: (larvae: number) => boolean): number | null {
  if (ask.batches > 1) return fewest(Math.ceil(ask.wanted / ask.batches), most, enough);
  for (let within = Math.min(USUAL_LARVAE, most); ; within = Math.min(2 * within, most)) {
    const answer = larvaeNeeded(ask.wanted, ask.chance - NOISE, stagesOf(ask, within, ask.boxes), within);
    if (answer.kind === 'enough') return answer.larvae;
    if (within === most) return null;
  }
}

/** No fewer boxes can do than if a queen emerged in each of them. Several batches are reckoned by points, where that may not hold. */
const fewestBoxes = ({ batches, wanted, chance, stages: [, , , mating] }: QueenPlanAsk, larvae: number): number =>
  (batches > 1 ? null : boxesNeeded(wanted, chance - NOISE, tableFor(mating, larvae))) ?? wanted;

/** Smallest number in the range for which the rule holds, given that it then holds for all larger ones; null = none. */
function fewest(from: number, to: number, holds: (value: number) => boolean): number | null {
  let [low, size] = [from, 1];
  let high = from;
  while (!holds(high)) {
    if (high >= to) return null;
    low = high + 1;
    high = Math.min(to, high + size);
    size *= 2;
  }
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
}

function heldBackBy(ask: QueenPlanAsk, most: number): QueenPlan['heldBackBy'] {
  const lifted = {
    builder: { ...ask, cellsPerBuilder: null },
    boxes: { ...ask, boxes: null },
  } as const;
  return (['builder', 'boxes'] as const).filter((limit) => {
    const without = lifted[limit];
    const limits = limit === 'builder' ? ask.cellsPerBuilder : ask.boxes;
    return limits !== null && reachOf(without)(most, without.boxes) >= ask.chance - NOISE;
  });
}

/** Chance of enough queens from so many larvae a batch and so many boxes; kept, since halving asks again. */
function reachOf(ask: QueenPlanAsk): (each: number, boxes: number | null) => number {
  const known = new Map<string, number>();
  return (each, boxes) => {
    const key = `${each} ${boxes}`;
    const chance = known.get(key) ?? chanceOfAtLeast(layingOf(ask, each, boxes), ask.wanted);
    known.set(key, chance);
    return chance;
  };
}

function layingOf(ask: QueenPlanAsk, each: number, boxes: number | null): Float64Array {
  if (ask.batches === 1) return funnel(each, stagesOf(ask, each, boxes));
  const given = new Array<number>(ask.batches).fill(each);
  // What stands in the boxes at one time shares its weather and its care: one lot, whether boxes are short or not.
  const lot = boxes ?? each * ask.batches;
  if (ask.stages.every((nodes) => nodes.length === 1))
    return funnelSum(given, stagesOf(ask, each * ask.batches, null), lot, STAGES_IN_BOXES);
  const stages = ask.stages.map((nodes, stage) => ({ nodes, mostGoOn: stage === 0 ? ask.cellsPerBuilder : null }));
  return sharedFunnel(given, stages, lot, STAGES_IN_BOXES);
}

/** Emergence and mating. */
const STAGES_IN_BOXES = 2;

/** Ripe cells go into the boxes, so the boxes cut what was sealed; emergence and mating happen in them. */
const stagesOf = (
  { stages, cellsPerBuilder }: QueenPlanAsk,
  most: number,
  boxes: number | null,
): readonly FunnelStage[] =>
  stages.map((nodes, stage) => ({
    table: tableFor(nodes, most),
    mostGoOn: [cellsPerBuilder, boxes][stage] ?? null,
  }));

/** Tables by what is believed of the stage: the same belief is asked about many times, and a table holds all smaller numbers. */
const kept = new WeakMap<readonly RateNode[], StageTable>();

function tableFor(nodes: readonly RateNode[], most: number): StageTable {
  const known = kept.get(nodes);
  if (known && known.length > most) return known;
  const table = stageTable(nodes, Math.max(50, Math.min(MOST_EACH, Math.ceil(1.4 * most)), most));
  kept.set(nodes, table);
  return table;
}
