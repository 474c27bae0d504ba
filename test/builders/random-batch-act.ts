import { dropStep } from '../../main/operations/batches/drop-step.ts';
import { recordLoss } from '../../main/operations/batches/record-loss.ts';
import { takeUpStep } from '../../main/operations/batches/take-up-step.ts';
import type { Desk } from '../../main/operations/operation.ts';
import type { Draw } from './draw.ts';

type Act = (desk: Desk, draw: Draw) => { readonly ok: boolean };

const anyBatch = (desk: Desk, draw: Draw): string => draw.from(desk.workbook.tables.batches.all())?.id ?? 'none';

/** What is said of a batch besides its counts and days: jobs that will not be done, and why cells were lost. */
export const BATCH_ACTS: Readonly<Record<string, Act>> = {
  'say why cells were lost': (desk, draw) =>
    recordLoss(desk, {
      id: desk.ids.next(),
      batchId: anyBatch(desk, draw),
      ...draw.pick([
        { stage: 'taken', reason: 'drowned' },
        { stage: 'sealed', reason: 'chilled' },
      ] as const),
      cells: draw.below(4),
    }),
  'drop a step': (desk, draw) =>
    dropStep(desk, {
      id: desk.ids.next(),
      batchId: anyBatch(desk, draw),
      step: draw.pick(['check-own-cells', 'count-sealed', 'set-out'] as const),
      droppedOn: draw.day('2026-05-20', 6),
      reason: 'rain',
    }),
  'take a step up again': (desk, draw) => {
    const drop = draw.from(desk.workbook.tables.stepDrops.all());
    return takeUpStep(desk, { batchId: drop?.batchId ?? 'none', step: drop?.step ?? 'count-sealed' });
  },
};
