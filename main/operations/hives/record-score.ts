import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { RecordScore } from '../../../shared/contract/stock.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';

type Score = z.infer<typeof RecordScore>;

/** One score of one trait on one day; the same trait and day again corrects it. */
export function recordScore({ workbook }: Desk, score: Score): Result<Score, Refusal> {
  const hive = workbook.tables.colonies.get(score.colonyId)?.code ?? '';
  return workbook.change({ did: 'record-score', hive }, ({ colonies, stockScores }) => {
    const { colonyId, trait, scoredOn } = score;
    if (!colonies.get(colonyId)) return refuse({ kind: 'hive-missing', field: 'colonyId' });
    const known = stockScores.where({ colonyId, trait, scoredOn })[0];
    const row = { ...score, id: known?.id ?? score.id };
    if (known) stockScores.update(row);
    else stockScores.insert(row);
    return ok(row);
  });
}
