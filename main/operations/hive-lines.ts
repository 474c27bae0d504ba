import type { HiveLine } from '../../shared/contract/hives.ts';
import { compareCodes } from '../../shared/kernel/box-codes.ts';
import { type Day, type IsoDay, isoOfDay, yearOfDay } from '../../shared/kernel/day.ts';
import type { Colony } from '../../shared/model/colony.ts';
import type { HiveLook } from '../../shared/model/look.ts';
import type { Tables } from '../workbook/workbook.ts';
import { handsOffOn, type RunningBatch } from './hands-off.ts';
import { quietHives } from './quiet-hives.ts';

export function hiveLine(tables: Tables, running: readonly RunningBatch[], colony: Colony, today: Day): HiveLine {
  const season = yearOfDay(today);
  const span = handsOffOn(running, today).find((one) => one.colonyId === colony.id);
  const quiet = quietHives(tables, today).find((one) => one.id === colony.id);
  return {
    id: colony.id,
    code: colony.code,
    name: colony.name,
    yardId: colony.yardId,
    yard: colony.yardId === null ? null : (tables.yards.get(colony.yardId)?.name ?? null),
    place: colony.place,
    motherLine: colony.motherLine,
    roles: tables.colonyRoles.where({ colonyId: colony.id, season }).map((role) => role.role),
    ended: colony.endedOn !== null,
    handsOff: span ? { until: isoOfDay(span.span.to), batch: span.batch.code, step: span.span.step } : null,
    newQueen: quiet ? { until: quiet.until, queen: quiet.queen } : null,
    batchesFed: tables.batches.where({ builderId: colony.id }).length,
    batchesMothered: tables.batches.where({ breederId: colony.id }).length,
  };
}

/** The hives of one yard, or all when it is null, in the order of screen and sheet: yard by yard and by code. */
export function hivesInTypingOrder(tables: Tables, yardId: string | null): readonly Colony[] {
  const yardOf = (colony: Colony) => (colony.yardId === null ? null : tables.yards.get(colony.yardId))?.name ?? '';
  return tables.colonies
    .all()
    .filter((colony) => colony.endedOn === null && (yardId === null || colony.yardId === yardId))
    .toSorted((a, b) => compareCodes(yardOf(a), yardOf(b)) || compareCodes(a.code, b.code));
}

/** The last look at a hive before a day. */
export const lastHiveLook = (tables: Tables, colonyId: string, before: IsoDay): HiveLook | null =>
  tables.hiveLooks
    .where({ colonyId })
    .filter(({ lookedOn }) => lookedOn < before)
    .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1))
    .at(-1) ?? null;
