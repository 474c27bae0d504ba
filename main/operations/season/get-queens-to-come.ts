import type { QueensToCome } from '../../../shared/contract/season-plan.ts';
import { sumForecasts } from '../../engine/yield/sum-forecasts.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { queensToCome } from './get-batch-expectation.ts';

/** What all batches that run or are planned may still bring together, and those of which nothing can be said. */
export async function getQueensToCome(desk: Desk): Promise<QueensToCome> {
  const batches = runningBatches(desk.workbook.tables, desk.today)
    .map(({ batch }) => batch)
    .filter(({ practice }) => !practice);
  const each = await Promise.all(batches.map(async (batch) => ({ batch, toCome: await queensToCome(desk, batch, 0) })));
  const known = each.flatMap(({ toCome }) => (toCome ? [toCome.proved] : []));
  const isWithoutFigures = (batchId: string): boolean => {
    const tally = desk.workbook.tables.tallies.get(batchId);
    return (tally?.given ?? tally?.taken ?? tally?.sealed ?? null) === null && (tally?.placed ?? 0) === 0;
  };
  return {
    proved: known.length === 0 ? null : sumForecasts(known),
    batches: known.length,
    notReckoned: each
      .filter(({ batch, toCome }) => toCome === null && isWithoutFigures(batch.id))
      .map(({ batch: { id, code } }) => ({ id, code })),
  };
}
