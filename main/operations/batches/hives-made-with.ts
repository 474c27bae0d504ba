import type { Id } from '../../../shared/kernel/id.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { Tables, Workbook } from '../../workbook/workbook.ts';

/**
 * Hives that were made in the start form of this very batch and that nothing else speaks of: the journal knows no change
 * of them, nor of anything that belongs to them, but the one that made both.
 */
export function hivesMadeWith({ journal }: Workbook, tables: Tables, batch: Batch): readonly Colony[] {
  const made = new Set(
    journal
      .changesOf({ id: batch.id, column: 'batch_id' })
      .filter((change) => change.rowId === batch.id && (change.old === null || change.new === null))
      .map(({ stepId }) => stepId),
  );
  const onlyMade = (id: Id): boolean => {
    const changes = journal.changesOf({ id, column: 'colony_id' });
    return changes.length > 0 && changes.every(({ stepId }) => made.has(stepId));
  };
  return [...new Set([batch.breederId, batch.builderId])].flatMap((id) => {
    const colony = id === null ? null : tables.colonies.get(id);
    return colony && onlyMade(colony.id) && !isNamedElsewhere(tables, colony.id, batch.id) ? [colony] : [];
  });
}

const isNamedElsewhere = ({ batches, queens }: Tables, hive: Id, batch: Id): boolean =>
  [...batches.where({ breederId: hive }), ...batches.where({ builderId: hive })].some(({ id }) => id !== batch) ||
  queens.where({ breederId: hive }).length > 0;
