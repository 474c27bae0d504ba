import type { z } from 'zod';
import type { CompareFactor, CompareSeason, GroupPart } from '../../../shared/contract/season.ts';
import { dateOfDay } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { tallyOf } from '../batch-lines.ts';

/** A batch with its kept sums and the group it falls into. */
export interface Counted {
  readonly batch: Batch;
  readonly tally: BatchTally;
  readonly group: Group;
}

interface Group {
  readonly id: string;
  readonly label: string;
  readonly parts: readonly GroupPart[];
}

/** The batches a comparison rests on; practice and other seasons left out as asked. */
export function countedBatches(tables: Tables, input: z.infer<typeof CompareSeason>): readonly Counted[] {
  const batches = input.season === null ? tables.batches.all() : tables.batches.where({ season: input.season });
  const tallies = input.season === null ? new Map(tables.tallies.all().map((one) => [one.batchId, one])) : null;
  return batches
    .filter((batch) => !(input.leaveOutPractice && batch.practice))
    .map((batch) => ({
      batch,
      tally: tallies?.get(batch.id) ?? tallyOf(tables, batch),
      group: groupOf(tables, batch, input),
    }));
}

function groupOf(tables: Tables, batch: Batch, { factor, and }: z.infer<typeof CompareSeason>): Group {
  const factors = and === null || and === factor ? [factor] : [factor, and];
  const parts = factors.map((one) => ({ factor: one, ...levelOf(tables, batch, one) }));
  return { id: parts.map(({ id }) => id).join(' '), label: parts.map(({ label }) => label).join(' '), parts };
}

type Level = Omit<GroupPart, 'factor'>;

const UNKNOWN: Level = { id: 'unknown', label: '' };

/** Which method, builder, season ... a batch belongs to. */
export function levelOf(tables: Tables, batch: Batch, factor: CompareFactor): Level {
  switch (factor) {
    case 'method':
      return methodGroup(tables, batch);
    case 'builder':
      return hiveGroup(tables, batch.builderId);
    case 'breeder':
      return hiveGroup(tables, batch.breederId);
    case 'season':
      return { id: String(batch.season), label: String(batch.season) };
    case 'month': {
      const month = String(dateOfDay(timetableOf(tables, batch).larvaeGivenOn).month);
      return { id: month, label: month };
    }
    case 'boxType':
      return boxTypeGroup(tables, batch);
  }
}

function methodGroup(tables: Tables, batch: Batch): Level {
  const copy = batch.methodCopyId === null ? null : tables.methodCopies.get(batch.methodCopyId);
  return copy ? { id: copy.id, label: copy.name } : { id: batch.method, label: batch.method };
}

function hiveGroup(tables: Tables, colonyId: string | null): Level {
  const colony = colonyId === null ? null : tables.colonies.get(colonyId);
  return colony ? { id: colony.id, label: colony.code } : UNKNOWN;
}

/** A batch goes with the type most of its boxes are of. */
function boxTypeGroup(tables: Tables, batch: Batch): Level {
  const types = tables.placements
    .where({ batchId: batch.id })
    .flatMap((placement) => tables.boxes.get(placement.boxId)?.boxType ?? []);
  const counts = [...Map.groupBy(types, (type) => type)].toSorted(([, a], [, b]) => b.length - a.length);
  const most = counts[0]?.[0];
  return most ? { id: most, label: most } : UNKNOWN;
}
