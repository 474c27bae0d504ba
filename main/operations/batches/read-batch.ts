import type { BarRow, BatchDetail, BatchSpread, PlacementRow } from '../../../shared/contract/batches.ts';
import { compareCodes } from '../../../shared/kernel/box-codes.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Batch, CountedStage } from '../../../shared/model/batch.ts';
import type { MatingBox } from '../../../shared/model/mating-box.ts';
import { cellSpread, spareCells } from '../../engine/boxes/cell-spread.ts';
import { lossesByReason } from '../../engine/yield/losses-by-reason.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { copyOf, timetableOf, timetableView } from '../batch-calendar.ts';
import { batchLine, lastLook } from '../batch-lines.ts';
import { lossFacts } from '../batch-losses.ts';
import { flightView } from '../flight-view.ts';
import type { Desk } from '../operation.ts';
import { planningRules } from '../planning-rules.ts';

/** Everything the page of one batch shows. */
export function readBatch({ today }: Pick<Desk, 'today'>, tables: Tables, batch: Batch): BatchDetail {
  const moves = new Map(tables.stepMoves.where({ batchId: batch.id }).map((move) => [move.step, move.reason]));
  const drops = new Map(tables.stepDrops.where({ batchId: batch.id }).map((drop) => [drop.step, drop.reason]));
  const timetable = timetableOf(tables, batch);
  const placements = tables.placements.where({ batchId: batch.id });
  const free = freeBoxes(tables);
  return {
    ...batchLine(tables, batch, today),
    batch,
    timetable: timetableView(timetable, {
      today,
      moves,
      drops,
      copy: copyOf(tables, batch),
      dronesMatureFrom: planningRules(tables).dronesMatureFrom,
    }),
    flight: flightView(tables, batch.id, timetable, today),
    bars: barRows(tables, batch),
    placements: placements.map((placement): PlacementRow => {
      const look = lastLook(tables, placement.id);
      return {
        placementId: placement.id,
        boxId: placement.boxId,
        box: tables.boxes.get(placement.boxId)?.code ?? '',
        placedOn: placement.placedOn,
        endedOn: placement.endedOn,
        lastResult: look?.result ?? null,
        lastLookOn: look?.lookedOn ?? null,
      };
    }),
    losses: lossesByReason([lossFacts(tables, batch.id)]),
    observations: tables.observations.where({ batchId: batch.id }),
    freeBoxes: free.map(({ code }) => code),
    spread: spreadOf(tables, batch, free),
    labelsPrintedOn: labelsPrintedOn(
      tables,
      placements.map((placement) => placement.id),
    ),
  };
}

function barRows(tables: Tables, batch: Batch): readonly BarRow[] {
  const counts = tables.counts.where({ batchId: batch.id });
  return tables.bars
    .where({ batchId: batch.id })
    .toSorted((a, b) => a.number - b.number)
    .map((bar) => {
      const own = counts.filter((count) => count.barId === bar.id);
      const cells = (stage: CountedStage) => own.find((count) => count.stage === stage)?.cells ?? null;
      return {
        barId: bar.id,
        number: bar.number,
        counts: { given: cells('given'), taken: cells('taken'), removed: cells('removed'), sealed: cells('sealed') },
        countedOn:
          own
            .map((count) => count.countedOn)
            .toSorted()
            .at(-1) ?? null,
      };
    });
}

function freeBoxes(tables: Tables): readonly MatingBox[] {
  const held = new Set(tables.placements.where({ endedOn: null }).map((placement) => placement.boxId));
  return tables.boxes
    .where({ retiredOn: null })
    .filter((box) => !held.has(box.id))
    .toSorted((a, b) => a.walkOrder - b.walkOrder || compareCodes(a.code, b.code));
}

function spreadOf(tables: Tables, batch: Batch, free: readonly MatingBox[]): BatchSpread {
  const yardOf = ({ yardId }: MatingBox) => (yardId === null ? null : (tables.yards.get(yardId)?.name ?? null));
  const motherOf = (breederId: Id | null) =>
    breederId === null ? null : (tables.colonies.get(breederId)?.code ?? null);
  const boxed = tables.placements.where({ endedOn: null }).flatMap(({ boxId, batchId }) => {
    const [box, from] = [tables.boxes.get(boxId), tables.batches.get(batchId)];
    return box && from ? [{ mother: motherOf(from.breederId), yard: yardOf(box) }] : [];
  });
  const mother = motherOf(batch.breederId);
  const spare = spareCells(tables.tallies.get(batch.id)?.sealed ?? null);
  return { mother, spare, ...cellSpread(mother, boxed, free.map(yardOf)) };
}

function labelsPrintedOn(tables: Tables, placementIds: readonly string[]): string | null {
  const days = placementIds.flatMap((placementId) =>
    tables.labelPrints.where({ placementId }).map((label) => label.printedOn),
  );
  return days.toSorted().at(-1) ?? null;
}
