import type { Id } from '../../shared/kernel/id.ts';
import type { BatchTally } from '../../shared/model/tally.ts';
import { type BarCountsByStage, batchTally, tallyOfSums } from '../engine/yield/batch-tally.ts';
import type { PlacementHistory } from '../engine/yield/placement-outcome.ts';
import type { Tables } from '../workbook/workbook.ts';

/** Adds one batch up anew and keeps the sums. Called inside every change that touches a count, look or cell. */
export function keepTally(tables: Tables, batchId: Id): BatchTally {
  const tally = tallyOfSums(batchId, tables.tallies.barSums(batchId), historiesOf(tables, batchId));
  tables.tallies.put(tally);
  return tally;
}

/** The sums as the rows say, read one by one and not kept: what a kept tally must equal. */
export function countTally(tables: Tables, batchId: Id): BatchTally {
  const countsByBar = new Map<Id, BarCountsByStage>();
  for (const bar of tables.bars.where({ batchId })) countsByBar.set(bar.id, {});
  for (const count of tables.counts.where({ batchId })) {
    const bar = countsByBar.get(count.barId);
    if (bar) bar[count.stage] = count.cells;
  }
  return batchTally(batchId, [...countsByBar.values()], historiesOf(tables, batchId));
}

const historiesOf = (tables: Tables, batchId: Id): readonly PlacementHistory[] =>
  tables.placements.where({ batchId }).map((placement) => ({
    results: tables.boxLooks
      .where({ placementId: placement.id })
      .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : a.lookedOn > b.lookedOn ? 1 : 0))
      .map((look) => look.result),
    end: placement.endReason,
  }));
