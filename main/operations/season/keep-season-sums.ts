import { type CompareFactor, RATE_STAGES } from '../../../shared/contract/season.ts';
import { type StageCountsOfBatch, stageCountsOf, stageTotal } from '../../engine/yield/stage-rate.ts';
import type { SeasonSum, StageSum, Tables } from '../../workbook/workbook.ts';
import { levelOf } from './counted-batches.ts';

/**
 * Sees to it that the sums of this season (null = of all) are kept for these factors, and answers their question's name.
 * Only seasons in which something has changed since are added up anew, from the tallies.
 */
export function keepSeasonSums(tables: Tables, factors: readonly CompareFactor[], asked: number | null): string {
  const question = factors.join(' ');
  const missing = tables.seasonSums.missing(question).filter((season) => asked === null || season === asked);
  const tallies =
    missing.length > 1
      ? tables.tallies.forComparing(null).filter(({ season }) => missing.includes(season))
      : missing.flatMap((season) => tables.tallies.forComparing(season));
  const groups = new Map<string, Group>();
  for (const tally of tallies) {
    const [level = '', other = ''] = factors.map((factor) => levelOf(tables, tally, factor));
    const { season, practice } = tally;
    const key = `${season} ${practice} ${level} ${other}`;
    const group = groups.get(key) ?? { season, practice, level, other, counts: [] };
    group.counts.push(stageCountsOf(tally));
    groups.set(key, group);
  }
  tables.seasonSums.keep(question, [...groups.values()].map(sumOf));
  return question;
}

interface Group extends Pick<SeasonSum, 'season' | 'practice' | 'level' | 'other'> {
  readonly counts: StageCountsOfBatch[];
}

function sumOf({ counts, ...group }: Group): SeasonSum {
  const stages = RATE_STAGES.map((stage): [string, StageSum] => [stage, stageTotal(counts.map((one) => one[stage]))]);
  return { ...group, batches: counts.length, stages: Object.fromEntries(stages) as SeasonSum['stages'] };
}
