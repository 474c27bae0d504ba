import type { PlanAnswer, PlanChoiceInput, PlannedStageView } from '../../../shared/contract/forecast.ts';
import { WEIGHED_STAGES } from '../../../shared/contract/season.ts';
import type { PlannedQueens, PlannedStage, PlanQueensAsk } from '../../engine/yield/plan-queens.ts';
import { goTogether, stageCorrelation } from '../../engine/yield/stage-correlation.ts';
import { stageCount } from '../../engine/yield/stage-rate.ts';
import type { Desk } from '../operation.ts';
import { countedBatches } from './counted-batches.ts';
import { expectedCount } from './expected-count.ts';
import { bareCounts, stageGroups } from './stage-groups.ts';

/** How many larvae, builders and boxes for so many queens, and where the cells will be lost, from the person's own counts. */
export async function previewPlan(
  { workbook: { tables }, reckon }: Desk,
  { method, whatIf, leaveOutPractice, batches: settled, ...limits }: PlanChoiceInput,
): Promise<PlanAnswer> {
  const asked = { factor: 'method', and: null, season: null, leaveOutPractice } as const;
  const byStage = WEIGHED_STAGES.map((stage) => ({ stage, groups: stageGroups(tables, { ...asked, stage }) }));
  const stages = byStage.map(({ stage, groups }) => {
    const group = groups.findIndex(({ id }) => id === method);
    return { groups: bareCounts(groups), group: group < 0 ? null : group, whatIf: whatIf[stage] };
  });
  const ask = { ...limits, stages: stages as unknown as PlanQueensAsk['stages'] };
  const { planned, batches } = await fewestBatches(settled, (count) => reckon('plan', { ...ask, batches: count }));
  const counted = countedBatches(tables, asked).filter(({ group }) => method === null || group.id === method);
  const correlation = stageCorrelation(
    counted.map(({ tally }) => WEIGHED_STAGES.map((stage) => stageCount(tally, stage))),
  );
  const { plan, layingPer100 } = planned;
  return {
    ...plan,
    batches,
    laying: expectedCount(plan.laying),
    layingPer100,
    stages: planned.stages.map((one, index) => {
      const groups = byStage[index]?.groups ?? [];
      return stageView(
        WEIGHED_STAGES[index] ?? 'take',
        one,
        groups.find(({ id }) => id === method)?.counts.length ?? 0,
      );
    }),
    stagesGoTogether: goTogether(correlation),
  };
}

/** The most batches proposed at a time. */
const MOST_BATCHES = 6;

/** As many batches as the person settled on, else the fewest that give enough queens. */
async function fewestBatches(
  settled: number | null,
  plan: (batches: number) => Promise<PlannedQueens>,
): Promise<{ readonly planned: PlannedQueens; readonly batches: number }> {
  let batches = settled ?? 1;
  let planned = await plan(batches);
  while (settled === null && planned.plan.larvaeEach === null && batches < MOST_BATCHES) {
    batches += 1;
    planned = await plan(batches);
  }
  return { planned, batches };
}

const stageView = (
  stage: PlannedStageView['stage'],
  { rate, loss, worth }: PlannedStage,
  batches: number,
): PlannedStageView => ({
  stage,
  ...rate,
  batches,
  lost: { mean: loss.expected, lower: loss.lower, upper: loss.upper },
  largest: loss.probabilityLargest,
  worth,
});
