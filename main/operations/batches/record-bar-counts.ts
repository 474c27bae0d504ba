import type { z } from 'zod';
import { LOW_TAKE_SHARE } from '../../../shared/biology/remedies.ts';
import type { BarCounts, BatchChanged } from '../../../shared/contract/batches.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { type Batch, COUNTED_STAGES, type CountedStage } from '../../../shared/model/batch.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { Ids } from '../../ports/ports.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { countRefusal } from './count-refusal.ts';

type Row = z.infer<typeof BarCounts>;

/** Below this many cells a share says nothing. */
const ENOUGH_CELLS = 8;

/** Writes one typed row of counts. null clears a count, 0 is one; what contradicts is refused, what is odd is kept. */
export function recordBarCounts(desk: Desk, row: Row): Result<BatchChanged, Refusal> {
  const naming = (batch: string, { bars }: Tables) =>
    ({ did: 'record-bar-counts', batch, bar: bars.get(row.barId)?.number ?? null }) as const;
  return changeBatch(desk, naming, row.batchId, (tables, batch) => {
    const refusal = rowRefusal(tables, batch, row);
    if (refusal) return refuse(refusal);
    const cleared = COUNTED_STAGES.filter((stage) => writeCount(tables, desk.ids, row, stage) === 'cleared');
    reopenCounting(tables, batch, cleared);
    markCountedSteps(tables, desk.ids, batch, row);
    const placed = tables.placements.where({ batchId: batch.id }).length;
    const sealed = sealedIfKnown(tables, batch);
    if (sealed !== null && placed > sealed)
      return refuse({ kind: 'more-placed-than-sealed', field: 'sealed', placed, sealed });
    return ok(rowNotices(desk, row));
  });
}

function rowRefusal(
  tables: Tables,
  batch: Batch,
  { barId, countedOn, given, taken, removed, sealed }: Row,
): Refusal | null {
  if (tables.bars.get(barId)?.batchId !== batch.id) return { kind: 'bar-not-found' };
  const start = timetableOf(tables, batch).larvaeGivenOn;
  if (dayOfIso(countedOn) < start)
    return { kind: 'day-before-start', field: 'countedOn', day: countedOn, start: isoOfDay(start) };
  if (taken === null && removed !== null && removed > (given ?? removed))
    return { kind: 'more-removed-than-taken', field: 'removed', taken: given ?? 0, removed };
  return countRefusal({ given, taken, removed, sealed });
}

function writeCount(tables: Tables, ids: Ids, row: Row, stage: CountedStage): 'written' | 'cleared' | 'as-before' {
  const known = tables.counts.where({ barId: row.barId, stage })[0];
  const cells = row[stage];
  if (cells === (known?.cells ?? null)) return 'as-before';
  if (cells === null) {
    if (known) tables.counts.remove(known.id);
    return 'cleared';
  }
  const count = { batchId: row.batchId, barId: row.barId, stage, cells, countedOn: row.countedOn };
  if (known) tables.counts.update({ ...count, id: known.id });
  else tables.counts.insert({ ...count, id: ids.next() });
  return 'written';
}

/** A count taken back leaves its job open again. Larvae stay given, and a job with a note was marked by the person. */
function reopenCounting(tables: Tables, { id: batchId }: Batch, cleared: readonly CountedStage[]): void {
  for (const stage of cleared) {
    if (stage !== 'taken' && stage !== 'sealed') continue;
    for (const mark of tables.stepsDone.where({ batchId, step: `count-${stage}` }))
      if (mark.note === null) tables.stepsDone.remove(mark.id);
  }
}

/** Once every bar has a count, the job of counting is done; the person does not mark it a second time. */
function markCountedSteps(tables: Tables, ids: Ids, batch: Batch, row: Row): void {
  const jobs = { given: 'give-larvae', taken: 'count-taken', sealed: 'count-sealed' } as const;
  const bars = tables.bars.where({ batchId: batch.id }).length;
  for (const [stage, step] of Object.entries(jobs) as [keyof typeof jobs, Step][]) {
    const counts = tables.counts.where({ batchId: batch.id, stage });
    const already = tables.stepsDone.where({ batchId: batch.id, step }).length > 0;
    const day = step === 'give-larvae' ? isoOfDay(timetableOf(tables, batch).larvaeGivenOn) : row.countedOn;
    if (counts.length === bars && !already && row[stage] !== null)
      tables.stepsDone.insert({ id: ids.next(), batchId: batch.id, step, doneOn: day, note: null });
  }
}

function sealedIfKnown(tables: Tables, batch: Batch): number | null {
  const counts = tables.counts.where({ batchId: batch.id, stage: 'sealed' });
  if (counts.length < tables.bars.where({ batchId: batch.id }).length) return null;
  return counts.reduce((sum, count) => sum + count.cells, 0);
}

function rowNotices({ today }: Desk, { countedOn, given, taken }: Row): readonly Notice[] {
  const notices: Notice[] = [];
  if (given !== null && taken !== null && given >= ENOUGH_CELLS && taken / given < LOW_TAKE_SHARE.value)
    notices.push({ kind: 'low-take', field: 'taken', given, taken });
  if (dayOfIso(countedOn) > today) notices.push({ kind: 'day-in-future', field: 'countedOn', day: countedOn });
  return notices;
}
