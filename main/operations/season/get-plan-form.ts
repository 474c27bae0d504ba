import type { PlanForm } from '../../../shared/contract/forecast.ts';
import type { Desk } from '../operation.ts';
import { planningRules } from '../planning-rules.ts';
import { countedBatches } from './counted-batches.ts';

/** What the planner offers before anything is typed: the methods used so far, a builder's limit, boxes free now. */
export function getPlanForm({ workbook: { tables } }: Desk): PlanForm {
  const counted = countedBatches(tables, { factor: 'method', and: null, season: null, leaveOutPractice: true });
  const held = new Set(tables.placements.where({ endedOn: null }).map(({ boxId }) => boxId));
  return {
    methods: [...Map.groupBy(counted, ({ group }) => group.id)]
      .map(([id, batches]) => ({ id, label: batches[0]?.group.label ?? '', batches: batches.length }))
      .toSorted((a, b) => b.batches - a.batches),
    cellsPerBuilder: planningRules(tables).cellsPerBuilder,
    freeBoxes: tables.boxes.all().filter((box) => box.retiredOn === null && !held.has(box.id)).length,
  };
}
