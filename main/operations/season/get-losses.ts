import type { z } from 'zod';
import type { CompareSeason, SeasonLosses } from '../../../shared/contract/season.ts';
import { lossesByReason } from '../../engine/yield/losses-by-reason.ts';
import { lossFacts } from '../batch-losses.ts';
import type { Desk } from '../operation.ts';
import { countedBatches } from './counted-batches.ts';

/** Where the cells and queens of the compared batches were lost, and why, as far as somebody said so. */
export function getLosses({ workbook: { tables } }: Desk, input: z.infer<typeof CompareSeason>): SeasonLosses {
  const facts = countedBatches(tables, input).map(({ batch }) => lossFacts(tables, batch.id));
  return { stages: lossesByReason(facts) };
}
