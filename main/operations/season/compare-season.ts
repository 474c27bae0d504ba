import type { z } from 'zod';
import {
  type CompareFactor,
  type CompareRow,
  type CompareSeason,
  RATE_STAGES,
  type RateFigure,
  type RateStage,
  type SeasonComparison,
} from '../../../shared/contract/season.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import { dateOfDay } from '../../../shared/kernel/day.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { stageCount, stageRate } from '../../engine/yield/stage-rate.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { tallyOf } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';

interface Counted {
  readonly batch: Batch;
  readonly tally: BatchTally;
  readonly group: { readonly id: string; readonly label: string };
}

/** Take, sealing, emergence, mating and the whole way, group by group, from the kept tallies; no cell is read. */
export function compareSeason({ workbook: { tables } }: Desk, input: z.infer<typeof CompareSeason>): SeasonComparison {
  const all = tables.batches.all();
  const chosen = all.filter(
    (batch) => (input.season === null || batch.season === input.season) && !(input.leaveOutPractice && batch.practice),
  );
  const counted = chosen.map((batch) => ({
    batch,
    tally: tallyOf(tables, batch),
    group: groupOf(tables, batch, input.factor),
  }));
  const groups = Map.groupBy(counted, (one) => one.group.id);
  const through = counted.filter(({ tally }) => stageCount(tally, 'through') !== null).length;
  return {
    factor: input.factor,
    season: input.season,
    seasons: [...new Set(all.map((batch) => batch.season))].toSorted((a, b) => b - a),
    rows: [...groups.values()].map(compareRow).toSorted((a, b) => compareCodes(a.label, b.label)),
    runningLeftOut: counted.length - through,
  };
}

function compareRow(group: readonly Counted[]): CompareRow {
  const tallies = group.map((one) => one.tally);
  const rates = Object.fromEntries(RATE_STAGES.map((stage) => [stage, stageRate(tallies, stage)]));
  return {
    groupId: group[0]?.group.id ?? '',
    label: group[0]?.group.label ?? '',
    batchIds: group.map((one) => one.batch.id),
    rates: rates as Record<RateStage, RateFigure>,
    batchPoints: group.flatMap(({ batch, tally }) =>
      RATE_STAGES.flatMap((stage) => {
        const count = stageCount(tally, stage);
        return count ? [{ batchId: batch.id, batch: batch.code, stage, ...count }] : [];
      }),
    ),
  };
}

const UNKNOWN = { id: 'unknown', label: '' };

function groupOf(tables: Tables, batch: Batch, factor: CompareFactor): Counted['group'] {
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

function methodGroup(tables: Tables, batch: Batch): Counted['group'] {
  const copy = batch.methodCopyId === null ? null : tables.methodCopies.get(batch.methodCopyId);
  return copy ? { id: copy.id, label: copy.name } : { id: batch.method, label: batch.method };
}

function hiveGroup(tables: Tables, colonyId: string | null): Counted['group'] {
  const colony = colonyId === null ? null : tables.colonies.get(colonyId);
  return colony ? { id: colony.id, label: colony.code } : UNKNOWN;
}

/** A batch goes with the type most of its boxes are of. */
function boxTypeGroup(tables: Tables, batch: Batch): Counted['group'] {
  const types = tables.placements
    .where({ batchId: batch.id })
    .flatMap((placement) => tables.boxes.get(placement.boxId)?.boxType ?? []);
  const counts = [...Map.groupBy(types, (type) => type)].toSorted(([, a], [, b]) => b.length - a.length);
  const most = counts[0]?.[0];
  return most ? { id: most, label: most } : UNKNOWN;
}
