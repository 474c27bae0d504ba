import type { z } from 'zod';
import type { Cell } from '../../../shared/contract/exchange.ts';
import type { TablesMade } from '../../../shared/contract/files.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { type ExportFigures, RATE_STAGES, WEIGHED_STAGES } from '../../../shared/contract/season.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import { BYTE_ORDER_MARK, csvText } from '../../exchange/csv-text.ts';
import { base64Of } from '../../exchange/file-bytes.ts';
import type { Desk } from '../operation.ts';
import { workbookWords } from '../workbook-words.ts';
import { compareSeason } from './compare-season.ts';
import { compareStage } from './compare-stage.ts';
import { groupName } from './group-name.ts';

/** The comparison as a table for a spreadsheet: one row for each group and stage, plain and weighed. Changes nothing. */
export async function exportFigures(
  desk: Desk,
  { separator, ...asked }: z.infer<typeof ExportFigures>,
): Promise<Result<TablesMade, Refusal>> {
  const words = workbookWords(desk);
  const { rows } = compareSeason(desk, asked);
  const weighed = await Promise.all(
    WEIGHED_STAGES.map((stage) => compareStage(desk, { ...asked, stage, allowingFor: null, ahead: 1 })),
  );
  const lines = rows.flatMap((row) =>
    RATE_STAGES.map((stage): readonly Cell[] => {
      const { successes, of, batches, rate, interval } = row.rates[stage];
      const group = weighed.find((one) => one.stage === stage)?.groups.find(({ groupId }) => groupId === row.groupId);
      const plain = [successes, of, batches, rate, interval?.lower ?? null, interval?.upper ?? null];
      const model = [group?.mean ?? null, group?.lower ?? null, group?.upper ?? null];
      return [groupName(row, words), words.season.stages[stage].name, ...[...plain, ...model].map(rounded)];
    }),
  );
  const text = csvText(words.season.figureColumns, lines, { separator: separator === 'comma' ? ',' : ';' });
  return ok({
    name: `${words.season.figuresFile(words.season.factors[asked.factor], isoOfDay(desk.today))}.csv`,
    mediaType: 'text/csv',
    base64: base64Of(`${BYTE_ORDER_MARK}${text}\r\n`),
    rows: lines.length,
  });
}

/** Six digits are more than any of these figures can carry. */
const rounded = (value: number | null): number | null => (value === null ? null : Number(value.toPrecision(6)));
