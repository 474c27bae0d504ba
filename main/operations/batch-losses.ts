import type { Id } from '../../shared/kernel/id.ts';
import type { LossFacts } from '../engine/yield/losses-by-reason.ts';
import type { Tables } from '../workbook/workbook.ts';
import { lastLook } from './batch-lines.ts';
import { countTally } from './tally-keeping.ts';

/** What the losses of a batch are reckoned from: its sums, the reasons typed, and the drone-layers the looks tell. */
export function lossFacts(tables: Tables, batchId: Id): LossFacts {
  const last = tables.placements.where({ batchId }).map(({ id }) => lastLook(tables, id)?.result);
  return {
    tally: tables.tallies.get(batchId) ?? countTally(tables, batchId),
    losses: tables.losses.where({ batchId }),
    droneLayers: last.filter((result) => result === 'drone-layer').length,
  };
}
