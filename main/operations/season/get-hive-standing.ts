import type { z } from 'zod';
import type { HiveAsked, HiveStageStanding, HiveStanding } from '../../../shared/contract/forecast.ts';
import { WEIGHED_STAGES } from '../../../shared/contract/season.ts';
import { certaintyWord } from '../../engine/yield/certainty.ts';
import type { Desk } from '../operation.ts';
import { type StageGroup, stageGroups } from './stage-groups.ts';

/** A hive as builder and as mother against all the other hives, stage by stage. */
export async function getHiveStanding(desk: Desk, { colonyId }: z.infer<typeof HiveAsked>): Promise<HiveStanding> {
  const [asBuilder, asMother] = await Promise.all(
    (['builder', 'breeder'] as const).map((factor) => standingAs(desk, factor, colonyId)),
  );
  return { asBuilder: asBuilder ?? [], asMother: asMother ?? [] };
}

async function standingAs(
  desk: Desk,
  factor: 'builder' | 'breeder',
  colonyId: string,
): Promise<readonly HiveStageStanding[]> {
  const { tables } = desk.workbook;
  const asked = { factor, and: null, season: null, leaveOutPractice: true } as const;
  const standings = WEIGHED_STAGES.map(async (stage): Promise<HiveStageStanding | null> => {
    const groups = stageGroups(tables, { ...asked, stage });
    const own = countsOf(groups.filter(({ id }) => id === colonyId));
    const rest = countsOf(groups.filter(({ id }) => id !== colonyId));
    if (own.length === 0) return null;
    const { rates } = await desk.reckon('weigh', { groups: rest.length === 0 ? [own] : [own, rest] });
    const [hive, others] = rates.groups;
    const probability = rates.probabilityBetter[0]?.[1] ?? 0.5;
    const surer = Math.max(probability, 1 - probability);
    return {
      stage,
      batches: own.length,
      mean: hive?.mean ?? 0,
      lower: hive?.lower ?? 0,
      upper: hive?.upper ?? 1,
      otherBatches: rest.length,
      otherMean: others?.mean ?? 0,
      against:
        rest.length === 0
          ? null
          : { better: probability >= 0.5 ? 'hive' : 'rest', certainty: certaintyWord(surer), probability: surer },
    };
  });
  return (await Promise.all(standings)).filter((standing) => standing !== null);
}

const countsOf = (groups: readonly StageGroup[]) =>
  groups.flatMap(({ counts }) => counts.map(({ successes, of }) => ({ successes, of })));
