import type { z } from 'zod';
import type { CompareStage, Settling } from '../../../shared/contract/season.ts';
import { MOST_MORE, SETTLED } from '../../engine/yield/more-batches.ts';
import type { Desk } from '../operation.ts';
import { bareCounts, stageGroups } from './stage-groups.ts';

/** How many more batches would settle which of the leading two is better; null where that is settled, or there is one. */
export async function getBatchesToSettle(
  { workbook: { tables }, reckon }: Desk,
  input: z.infer<typeof CompareStage>,
): Promise<Settling | null> {
  const groups = bareCounts(stageGroups(tables, input));
  if (groups.length < 2) return null;
  const { rates, lead } = await reckon('weigh', { groups, ahead: input.ahead });
  if (!lead || (rates.probabilityBetter[lead.first]?.[lead.second] ?? 0) >= SETTLED) return null;
  return { more: await reckon('settle', { groups, first: lead.first, second: lead.second }), most: MOST_MORE };
}
