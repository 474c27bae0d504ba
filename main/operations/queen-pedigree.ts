import { type Day, dayOfIso, type IsoDay, isoOfDay } from '../../shared/kernel/day.ts';
import type { Id } from '../../shared/kernel/id.ts';
import type { Queen } from '../../shared/model/queen.ts';
import { type HiveStay, hiveStays } from '../engine/pedigree/hive-stays.ts';
import type { PedigreeQueen } from '../engine/pedigree/mother-lines.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';

export interface Pedigree {
  readonly byId: ReadonlyMap<Id, PedigreeQueen>;
  readonly stays: readonly HiveStay[];
  /** The expected emergence of the queens of a batch. */
  readonly bornOn: ReadonlyMap<Id, IsoDay>;
}

/** What the workbook knows of mothers: queens with the day of their larvae, and who headed which hive when. */
export function readPedigree(tables: Tables): Pedigree {
  const queens = tables.queens.all();
  const larvaeOn = new Map<Id, Day>();
  const bornOn = new Map<Id, IsoDay>();
  for (const batchId of new Set(queens.flatMap((queen) => queen.batchId ?? []))) {
    const batch = tables.batches.get(batchId);
    if (!batch) continue;
    const timetable = timetableOf(tables, batch);
    larvaeOn.set(batchId, timetable.larvaeGivenOn);
    bornOn.set(batchId, isoOfDay(timetable.emergence.expected));
  }
  const inPedigree = ({ id, motherId, breederId, batchId }: Queen): PedigreeQueen => ({
    id,
    motherId,
    breederId,
    larvaeOn: batchId === null ? null : (larvaeOn.get(batchId) ?? null),
  });
  return { byId: new Map(queens.map((queen) => [queen.id, inPedigree(queen)])), stays: staysOf(tables), bornOn };
}

export const staysOf = (tables: Tables): readonly HiveStay[] =>
  hiveStays(
    tables.queenMoves.all().map(({ queenId, movedOn, place, colonyId }) => ({
      queenId,
      on: dayOfIso(movedOn),
      colonyId: place === 'in-hive' ? colonyId : null,
    })),
  );
