import type { HiveLine } from '../../../shared/contract/hives.ts';
import { type Day, isoOfDay, yearOfDay } from '../../../shared/kernel/day.ts';
import type { Colony } from '../../../shared/model/colony.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { handsOffOn, type RunningBatch } from '../hands-off.ts';
import { quietHives } from '../quiet-hives.ts';

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
