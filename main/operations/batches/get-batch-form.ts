import type { BatchFormOffer, HiveRef } from '../../../shared/contract/batches.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { isoOfDay, yearOfDay } from '../../../shared/kernel/day.ts';
import type { Colony, Role } from '../../../shared/model/colony.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { builderHolds } from '../builder-holds.ts';
import type { Desk } from '../operation.ts';
import { nextBatchCode } from './next-code.ts';

/** What the start form offers: the next code, hives by role, who is free when, and what was chosen last time. */
export function getBatchForm({ workbook, today }: Desk): BatchFormOffer {
  const { tables } = workbook;
  const season = yearOfDay(today);
  const holds = builderHolds(tables).filter((hold) => hold.until > today);
  const last = tables.batches.all().at(-1);
  return {
    nextCode: nextBatchCode(tables, season),
    breeders: hivesFor(tables, 'breeder', season),
    builders: hivesFor(tables, 'builder', season).map((hive) => {
      const hold = holds.filter((one) => one.builderId === hive.id).toSorted((a, b) => b.until - a.until)[0];
      return { ...hive, freeFrom: hold ? isoOfDay(hold.until) : null, heldBy: hold?.batch ?? null };
    }),
    methodCopies: tables.methodCopies.all().map(({ id, name, origin }) => ({ id, name, origin })),
    lessons: tables.batches
      .all()
      .toSorted((a, b) => (a.anchorOn < b.anchorOn ? 1 : -1))
      .flatMap(({ id, code, method, lesson }) => (lesson ? [{ batchId: id, batch: code, method, lesson }] : [])),
    last: last
      ? { method: last.method, breederId: last.breederId, builderId: last.builderId, cells: last.cellsPlanned }
      : null,
  };
}

/** Hives with the role this season first, then all others: a role is a hint, never a fence. */
function hivesFor(tables: Tables, role: Role, season: number): readonly HiveRef[] {
  const inRole = new Set(tables.colonyRoles.where({ season, role }).map((one) => one.colonyId));
  const rank = (colony: Colony) => (inRole.has(colony.id) ? 0 : 1);
  return tables.colonies
    .where({ endedOn: null })
    .toSorted((a, b) => rank(a) - rank(b) || compareCodes(a.code, b.code))
    .map(({ id, code, name }) => ({ id, code, name }));
}
