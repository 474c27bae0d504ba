import type { BatchChanged } from '../../../shared/contract/batches.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { ChangeWords } from '../../../shared/model/journal.ts';
import type { Tables } from '../../workbook/workbook.ts';
import type { Desk } from '../operation.ts';
import { keepTally } from '../tally-keeping.ts';
import { readBatch } from './read-batch.ts';

type Work = (tables: Tables, batch: Batch) => Result<readonly Notice[], Refusal>;

/** The name of the change, from the code of its batch. */
type Naming = (code: string, tables: Tables) => ChangeWords;

/** One change of one batch: finds it, lets the work write, keeps its tally, answers the batch as it now stands. */
export function changeBatch(desk: Desk, naming: Naming, batchId: string, work: Work): Result<BatchChanged, Refusal> {
  const step = (tables: Tables, { batch }: BatchChanged) => naming(batch.code, tables);
  return desk.workbook.change(step, (tables) => {
    const batch = tables.batches.get(batchId);
    if (!batch) return refuse({ kind: 'batch-not-found' });
    const worked = work(tables, batch);
    if (!worked.ok) return worked;
    keepTally(tables, batchId);
    return ok({ batch: readBatch(desk, tables, tables.batches.get(batchId) ?? batch), notices: worked.value });
  });
}
