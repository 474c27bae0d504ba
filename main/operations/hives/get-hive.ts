import type { z } from 'zod';
import type { HiveDetail, HiveId, SeasonFigures } from '../../../shared/contract/hives.ts';
import { addDays, type Day, isoOfDay } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { Colony, Role } from '../../../shared/model/colony.ts';
import { isOpenJob } from '../../engine/calendar/open-steps.ts';
import { stageRate } from '../../engine/yield/stage-rate.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { batchLine, tallyOf } from '../batch-lines.ts';
import { builderHolds } from '../builder-holds.ts';
import { type RunningBatch, runningBatches } from '../hands-off.ts';
import { hiveLine } from '../hive-lines.ts';
import type { Desk } from '../operation.ts';
import { relativesOf } from './hive-kin.ts';

/** How far the line of days on a hive's page looks back and ahead. */
const DAYS_BACK = 7;
const DAYS_AHEAD = 28;

/** One hive with its roles, its figures as builder and as mother, its coming days and its looks; null when unknown. */
export function getHive(
  { workbook: { tables }, today }: Desk,
  { colonyId }: z.infer<typeof HiveId>,
): HiveDetail | null {
  const colony = tables.colonies.get(colonyId);
  if (!colony) return null;
  const running = runningBatches(tables, today);
  const fed = tables.batches.where({ builderId: colonyId });
  const mothered = tables.batches.where({ breederId: colonyId });
  const own = [...new Map([...fed, ...mothered].map((batch) => [batch.id, batch])).values()];
  const held = builderHolds(tables, colonyId).filter((hold) => hold.until > today);
  const line = hiveLine(tables, running, colony, today);
  return {
    ...line,
    colony,
    rolesBySeason: rolesBySeason(tables, colony),
    asBuilder: figuresBySeason(tables, fed),
    asBreeder: figuresBySeason(tables, mothered),
    batches: own
      .map((batch) => batchLine(tables, batch, today))
      .toSorted((a, b) => (a.larvaeGivenOn < b.larvaeGivenOn ? 1 : -1)),
    looks: tables.hiveLooks.where({ colonyId }).toSorted((a, b) => (a.lookedOn < b.lookedOn ? 1 : -1)),
    dayLine: dayLine(tables, running, colony, { today, newQueen: line.newQueen }),
    relatives: relativesOf(tables, colony, today),
    freeFrom: held.length === 0 ? null : isoOfDay(Math.max(...held.map((hold) => hold.until)) as Day),
  };
}

function rolesBySeason(tables: Tables, colony: Colony): HiveDetail['rolesBySeason'] {
  const bySeason = new Map<number, Role[]>();
  for (const { season, role } of tables.colonyRoles.where({ colonyId: colony.id }))
    bySeason.set(season, [...(bySeason.get(season) ?? []), role]);
  return [...bySeason].toSorted(([a], [b]) => b - a).map(([season, roles]) => ({ season, roles }));
}

function figuresBySeason(tables: Tables, batches: readonly Batch[]): readonly SeasonFigures[] {
  const seasons = [...new Set(batches.map((batch) => batch.season))].toSorted((a, b) => b - a);
  return seasons.map((season) => {
    const tallies = batches.filter((batch) => batch.season === season).map((batch) => tallyOf(tables, batch));
    return { season, batches: tallies.length, take: stageRate(tallies, 'take'), mating: stageRate(tallies, 'mating') };
  });
}

function dayLine(
  tables: Tables,
  running: readonly RunningBatch[],
  colony: Colony,
  { today, newQueen }: { readonly today: Day } & Pick<HiveDetail, 'newQueen'>,
): HiveDetail['dayLine'] {
  const looked = new Set(tables.hiveLooks.where({ colonyId: colony.id }).map(({ lookedOn }) => lookedOn));
  const fed = new Set(tables.feedings.where({ colonyId: colony.id }).map(({ fedOn }) => fedOn));
  const own = running.filter(({ batch }) => batch.builderId === colony.id || batch.breederId === colony.id);
  return Array.from({ length: DAYS_BACK + DAYS_AHEAD }, (_, index) => {
    const day = addDays(today, index - DAYS_BACK);
    const on = isoOfDay(day);
    const shut = own.find(
      ({ batch, timetable }) =>
        batch.builderId === colony.id &&
        timetable.handsOff.some((span) => span.place === 'builder' && span.from <= day && day <= span.to),
    );
    const jobs = own.flatMap(({ batch, timetable }) =>
      timetable.steps
        .filter((step) => isOpenJob(step) && step.expected === day && day >= today)
        .filter((step) => (step.place === 'builder' ? batch.builderId : batch.breederId) === colony.id)
        .filter((step) => step.place !== 'boxes')
        .map((step) => step.step),
    );
    return {
      on,
      handsOff: shut?.batch.code ?? null,
      newQueen: newQueen && day >= today && on <= newQueen.until ? newQueen.queen : null,
      jobs,
      looked: looked.has(on),
      fed: fed.has(on),
    };
  });
}
