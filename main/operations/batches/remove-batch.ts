import type { z } from 'zod';
import type { BatchId, BatchRemoved } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Placement } from '../../../shared/model/mating-box.ts';
import type { Queen } from '../../../shared/model/queen.ts';
import { motherOf } from '../../engine/pedigree/mother-lines.ts';
import type { Table, Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { readPedigree } from '../queen-pedigree.ts';
import { hivesMadeWith } from './hives-made-with.ts';

/**
 * Takes a batch out that was started by mistake, with its bars, counts, days, sightings and cells. Its boxes are as they
 * were before its cells came; what was seen in them, and queens with a number, are facts and stay, each in the box she is
 * in. Hives that were made on the way and are used by nothing else go too.
 */
export function removeBatch({ workbook }: Desk, { batchId }: z.infer<typeof BatchId>): Result<BatchRemoved, Refusal> {
  const naming = (_: Tables, gone: BatchRemoved) => ({ did: 'remove-batch', ...gone }) as const;
  return workbook.change(naming, (tables) => {
    const batch = tables.batches.get(batchId);
    if (!batch) return refuse({ kind: 'batch-not-found' });
    const hives = hivesMadeWith(workbook, tables, batch);
    const queens = freeQueens(tables, batchId);
    for (const placement of tables.placements.where({ batchId })) removeCell(tables, placement);
    const { counts, bars, stepsDone, stepMoves, stepDrops, losses, observations } = tables;
    removeAll(counts, counts.where({ batchId }));
    removeAll(bars, bars.where({ batchId }));
    removeAll(stepsDone, stepsDone.where({ batchId }));
    removeAll(stepMoves, stepMoves.where({ batchId }));
    removeAll(stepDrops, stepDrops.where({ batchId }));
    removeAll(losses, losses.where({ batchId }));
    removeAll(observations, observations.where({ batchId }));
    tables.tallies.remove(batchId);
    tables.batches.remove(batchId);
    for (const { id } of hives) {
      removeAll(tables.colonyRoles, tables.colonyRoles.where({ colonyId: id }));
      tables.colonies.remove(id);
    }
    return ok({ batch: batch.code, queens, hives: hives.map(({ code }) => code) });
  });
}

function removeAll<Row extends { readonly id: Id }>(table: Table<Row>, rows: readonly Row[]): void {
  for (const { id } of rows) table.remove(id);
}

/** The queens lose their batch. A mother who was reckoned from it is written down, since nothing else would tell her. */
function freeQueens(tables: Tables, batchId: Id): number {
  const queens = tables.queens.where({ batchId });
  const { byId, stays } = readPedigree(tables);
  const motherIdOf = ({ id, motherId }: Queen): Id | null => {
    const known = byId.get(id);
    const mother = known ? motherOf(known, stays) : null;
    return mother?.kind === 'queen' ? mother.id : motherId;
  };
  for (const queen of queens)
    tables.queens.update({ ...queen, motherId: motherIdOf(queen), batchId: null, placementId: null });
  return queens.length;
}

function removeCell(tables: Tables, { id, boxId, endedOn }: Placement): void {
  for (const look of tables.boxLooks.where({ placementId: id })) tables.boxLooks.update({ ...look, placementId: null });
  for (const queen of tables.queens.where({ placementId: id })) tables.queens.update({ ...queen, placementId: null });
  removeAll(tables.labelPrints, tables.labelPrints.where({ placementId: id }));
  // A free box waits for no look.
  if (endedOn === null) removeAll(tables.followUps, tables.followUps.where({ boxId, doneOn: null }));
  tables.placements.remove(id);
}
