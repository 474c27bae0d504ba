import type { z } from 'zod';
import type { BatchChanged, GiveAsPlanned } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Bar, CountedStage } from '../../../shared/model/batch.ts';
import { spreadCells } from '../../engine/calendar/spread-cells.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { changeBatch } from './change-batch.ts';
import { countRefusal } from './count-refusal.ts';

/** The person says that as many cells were given as planned: bars whose given cells are not counted get their part of the rest. */
export function giveAsPlanned(desk: Desk, { batchId }: z.infer<typeof GiveAsPlanned>): Result<BatchChanged, Refusal> {
  return changeBatch(
    desk,
    (batch) => ({ did: 'give-as-planned', batch }),
    batchId,
    (tables, batch) => {
      if (batch.cellsPlanned === null) return refuse({ kind: 'no-cells-planned' });
      const counted = tables.counts.where({ batchId, stage: 'given' });
      const open = tables.bars
        .where({ batchId })
        .filter((bar) => counted.every(({ barId }) => barId !== bar.id))
        .toSorted((a, b) => a.number - b.number);
      const left = Math.max(0, batch.cellsPlanned - counted.reduce((sum, { cells }) => sum + cells, 0));
      const parts = spreadCells(left, open.length);
      const day = isoOfDay(timetableOf(tables, batch).larvaeGivenOn);
      for (const [index, bar] of open.entries()) {
        const given = parts[index] ?? 0;
        const refusal = contradiction(tables, bar, given);
        if (refusal) return refuse(refusal);
        tables.counts.insert({
          id: desk.ids.next(),
          batchId,
          barId: bar.id,
          stage: 'given',
          cells: given,
          countedOn: day,
        });
      }
      if (tables.stepsDone.where({ batchId, step: 'give-larvae' }).length === 0)
        tables.stepsDone.insert({ id: desk.ids.next(), batchId, step: 'give-larvae', doneOn: day, note: null });
      return ok([]);
    },
  );
}

function contradiction(tables: Tables, bar: Bar, given: number): Refusal | null {
  const cells = (stage: CountedStage) => tables.counts.where({ barId: bar.id, stage })[0]?.cells ?? null;
  return countRefusal({ given, taken: cells('taken'), removed: cells('removed'), sealed: cells('sealed') });
}
