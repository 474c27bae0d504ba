import { type BatchCount, type GroupRates, groupRates } from './group-rates.ts';
import { type QueenPlan, type QueenPlanAsk, queenPlan } from './queen-plan.ts';
import { heavyNodes, meanRate, nodesOfFixed, nodesOfJoint, type RateNode } from './rate-nodes.ts';
import type { RateSummary } from './rate-summary.ts';
import { type StageLoss, stageLosses, worthOfBetterStage } from './stage-losses.ts';
import { twoLevelRates } from './two-level-rates.ts';

/** One stage as it was counted: the groups of the factor, and which of them the plan is for (null = one never tried). */
export interface CountedStageGroups {
  readonly groups: readonly (readonly BatchCount[])[];
  readonly group: number | null;
  /** "What if the rate were this": 0 to 1; null = as counted. */
  readonly whatIf: number | null;
}

export interface PlanQueensAsk extends Omit<QueenPlanAsk, 'stages'> {
  readonly stages: readonly [CountedStageGroups, CountedStageGroups, CountedStageGroups, CountedStageGroups];
}

export interface PlannedStage {
  readonly rate: Pick<RateSummary, 'mean' | 'lower' | 'upper'>;
  readonly loss: StageLoss;
  /** Laying queens gained of 100 larvae if this stage were as good as in the group's best third of batches. */
  readonly worth: number;
}

export interface PlannedQueens {
  readonly plan: QueenPlan;
  readonly layingPer100: number;
  readonly stages: readonly PlannedStage[];
}

/** What is believed of a stage, kept because many questions are asked of the same counts. */
export type Believe = (stage: Pick<CountedStageGroups, 'groups' | 'group'>) => Belief;

export interface Belief {
  readonly nodes: readonly RateNode[];
  readonly rate: RateSummary;
  /** Expected concentration of the batches. */
  readonly concentration: number;
  /** The lowest rate of the best third of the group's batches, each drawn towards the others. 0 without batches. */
  readonly bestThird: () => number;
}

export function believe({ groups, group }: Pick<CountedStageGroups, 'groups' | 'group'>): Belief {
  const rates = groupRates(groups);
  const nodes = heavyNodes(nodesOfJoint(jointOf(rates, group)));
  return {
    nodes,
    rate: (group === null ? undefined : rates.groups[group]) ?? rates.newGroup,
    concentration: nodes.reduce((sum, node) => sum + node.weight * node.concentration, 0),
    bestThird: onceAsked(() => bestThird((group === null ? undefined : groups[group]) ?? [])),
  };
}

/** Reckoned when first asked for: a forecast of one batch never asks. */
function onceAsked(reckon: () => number): () => number {
  let known: number | null = null;
  return () => {
    known ??= reckon();
    return known;
  };
}

const jointOf = (rates: GroupRates, group: number | null) =>
  (group === null ? undefined : rates.jointByGroup[group]) ?? rates.jointOfNewGroup;

/** A plan for so many queens from what was counted, and where its cells will be lost. */
export function planQueens(ask: PlanQueensAsk, beliefOf: Believe = believe): PlannedQueens {
  const beliefs = ask.stages.map(beliefOf);
  const nodes = ask.stages.map(({ whatIf }, stage) => {
    const belief = beliefs[stage];
    if (!belief) return [];
    return whatIf === null ? belief.nodes : nodesOfFixed(inside(whatIf), belief.concentration);
  }) as unknown as QueenPlanAsk['stages'];
  const losses = stageLosses(nodes);
  const means = nodes.map(meanRate);
  return {
    plan: queenPlan({ ...ask, stages: nodes }),
    layingPer100: losses.layingPer100,
    stages: losses.stages.map((loss, stage) => ({
      rate: rateOf(ask.stages[stage], beliefs[stage]),
      loss,
      worth: worthOfBetterStage(means, stage, beliefs[stage]?.bestThird() ?? 0),
    })),
  };
}

/** A rate is never quite 0 or 1. */
const inside = (rate: number): number => Math.min(0.999, Math.max(0.001, rate));

function rateOf(stage: CountedStageGroups | undefined, belief: Belief | undefined): PlannedStage['rate'] {
  const fixed = stage?.whatIf ?? null;
  if (fixed !== null) return { mean: fixed, lower: fixed, upper: fixed };
  const { mean = 0, lower = 0, upper = 1 } = belief?.rate ?? {};
  return { mean, lower, upper };
}

function bestThird(batches: readonly BatchCount[]): number {
  const counts = batches.filter(({ of }) => of > 0);
  if (counts.length === 0) return 0;
  const drawn = twoLevelRates(counts)
    .batches.map(({ mean }) => mean)
    .toSorted((a, b) => b - a);
  return drawn[Math.ceil(drawn.length / 3) - 1] ?? 0;
}
