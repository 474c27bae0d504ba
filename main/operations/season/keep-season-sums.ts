import { type CompareFactor, RATE_STAGES } from '../../../shared/contract/season.ts';
import { stageCountsOf, stageTotal } from '../../engine/yield/stage-rate.ts';
import type { SeasonSum, StageSum, Tables } from '../../workbook/workbook.ts';
import { type Counted, countedBatches } from './counted-batches.ts';

/**
 * Sees to it that the sums of this season (null = of all) are kept for these factors, and answers their question's name.
 * Only seasons in which something has changed since are added up anew, from the tallies.
 */
export function keepSeasonSums(tables: Tables, factors: readonly CompareFactor[], asked: number | null): string {
  const question = factors.join(' ');
  const missing = tables.seasonSums.missing(question).filter((season) => asked === null || season === asked);
  const [factor = 'method', and = null] = factors;
  const plain = { factor, and, leaveOutPractice: false } as const;
  const counted =
    missing.length > 1
      ? countedBatches(tables, { ...plain, season: null }).filter(({ batch }) => missing.includes(batch.season))
      : missing.flatMap((season) => countedBatches(tables, { ...plain, season }));
  const groups = Map.groupBy(counted, ({ batch, group }) => `${batch.season} ${batch.practice} ${group.id}`);
  tables.seasonSums.keep(
    question,
    [...groups.values()].flatMap((group) => sumOf(group)),
  );
  return question;
}

function sumOf(counted: readonly Counted[]): readonly SeasonSum[] {
  const [first] = counted;
  if (!first) return [];
  const counts = counted.map(({ tally }) => stageCountsOf(tally));
  const stages = RATE_STAGES.map((stage): [string, StageSum] => [stage, stageTotal(counts.map((one) => one[stage]))]);
  return [
    {
      season: first.batch.season,
      practice: first.batch.practice,
      level: first.group.parts[0]?.id ?? '',
      other: first.group.parts[1]?.id ?? '',
      batches: counted.length,
      stages: Object.fromEntries(stages) as SeasonSum['stages'],
    },
  ];
}
