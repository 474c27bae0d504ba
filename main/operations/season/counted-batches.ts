import type { z } from 'zod';
import type { CompareFactor, CompareSeason, GroupPart } from '../../../shared/contract/season.ts';
import { dateOfDay } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { emptyTally } from '../../engine/yield/batch-tally.ts';
import type { BatchGrouping, Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';

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
  const { season } = input;
  const batches = season === null ? tables.batches.all() : tables.batches.where({ season });
  const tallies = new Map(
    (season === null ? tables.tallies.all() : tables.tallies.ofSeason(season)).map((one) => [one.batchId, one]),
  );
  const factors = factorsOf(input);
  const groups = new Map<string, Group>();
  return batches
    .filter((batch) => !(input.leaveOutPractice && batch.practice))
    .map((batch) => {
      const levels = factors.map((factor) => levelOf(tables, batch, factor));
      const key = levels.join(' ');
      const group = groups.get(key) ?? groupOf(tables, factors, levels);
      groups.set(key, group);
      return { batch, tally: tallies.get(batch.id) ?? emptyTally(batch.id), group };
    });
}

/** The factors asked for, each once. */
export const factorsOf = ({
  factor,
  and,
}: Pick<z.infer<typeof CompareSeason>, 'factor' | 'and'>): readonly CompareFactor[] =>
  and === null || and === factor ? [factor] : [factor, and];

/** The group of these levels, one for each factor, as the person calls it. */
export function groupOf(tables: Tables, factors: readonly CompareFactor[], levels: readonly string[]): Group {
  const parts = factors.map((factor, index) => {
    const id = levels[index] ?? UNKNOWN;
    return { factor, id, label: labelOf(tables, factor, id) };
  });
  return { id: parts.map(({ id }) => id).join(' '), label: parts.map(({ label }) => label).join(' '), parts };
}

const UNKNOWN = 'unknown';

/** Which method, builder, season ... a batch belongs to: a key, a hive's id, a year or a month's number. */
export function levelOf(tables: Tables, batch: BatchGrouping, factor: CompareFactor): string {
  switch (factor) {
    case 'method':
      return batch.methodCopyId ?? batch.method;
    case 'builder':
      return batch.builderId ?? UNKNOWN;
    case 'breeder':
      return batch.breederId ?? UNKNOWN;
    case 'season':
      return String(batch.season);
    case 'month':
      return monthOf(tables, batch.id);
    case 'boxType':
      return mostUsedBoxType(tables, batch);
  }
}

function monthOf(tables: Tables, batchId: Id): string {
  const batch = tables.batches.get(batchId);
  return batch ? String(dateOfDay(timetableOf(tables, batch).larvaeGivenOn).month) : UNKNOWN;
}

function labelOf(tables: Tables, factor: CompareFactor, id: string): string {
  if (factor === 'method') return tables.methodCopies.get(id)?.name ?? id;
  if (factor === 'builder' || factor === 'breeder') return tables.colonies.get(id)?.code ?? '';
  return id === UNKNOWN ? '' : id;
}

/** A batch goes with the type most of its boxes are of. */
function mostUsedBoxType(tables: Tables, batch: Pick<Batch, 'id'>): string {
  const types = tables.placements
    .where({ batchId: batch.id })
    .flatMap((placement) => tables.boxes.get(placement.boxId)?.boxType ?? []);
  const counts = [...Map.groupBy(types, (type) => type)].toSorted(([, a], [, b]) => b.length - a.length);
  return counts[0]?.[0] ?? UNKNOWN;
}
