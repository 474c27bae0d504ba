import { dayOfIso } from '../../shared/kernel/day.ts';
import type { Queen } from '../../shared/model/queen.ts';
import { type HiveStay, hiveStays } from '../engine/pedigree/hive-stays.ts';
import type { PedigreeQueen } from '../engine/pedigree/mother-lines.ts';
import type { Tables } from '../workbook/workbook.ts';
import { timetableOf } from './batch-calendar.ts';

export interface Pedigree {
  readonly queens: readonly PedigreeQueen[];
  readonly stays: readonly HiveStay[];
}

/** What the workbook knows of mothers: queens with the day of their larvae, and who headed which hive when. */
export function readPedigree(tables: Tables, queens: readonly Queen[] = tables.queens.all()): Pedigree {
  const larvaeOn = new Map(
    tables.batches.all().map((batch) => [batch.id, timetableOf(tables, batch).larvaeGivenOn] as const),
  );
  return {
    queens: queens.map(({ id, motherId, breederId, batchId }) => ({
      id,
      motherId,
      breederId,
      larvaeOn: batchId === null ? null : (larvaeOn.get(batchId) ?? null),
    })),
    stays: staysOf(tables),
  };
}

export const staysOf = (tables: Tables): readonly HiveStay[] =>
  hiveStays(
    tables.queenMoves.all().map(({ queenId, movedOn, place, colonyId }) => ({
      queenId,
      on: dayOfIso(movedOn),
      colonyId: place === 'in-hive' ? colonyId : null,
    })),
  );
