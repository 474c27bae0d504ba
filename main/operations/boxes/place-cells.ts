import type { z } from 'zod';
import type { BoxesChanged, PlaceCells } from '../../../shared/contract/boxes.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { readBoxCodes } from '../../../shared/kernel/box-codes.ts';
import { dayOfIso, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Batch } from '../../../shared/model/batch.ts';
import type { MatingBox } from '../../../shared/model/mating-box.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { timetableOf } from '../batch-calendar.ts';
import { BoxReader } from '../box-lines.ts';
import { freeOutlook } from '../box-outlook.ts';
import type { Desk } from '../operation.ts';
import { keepTally } from '../tally-keeping.ts';

type Placing = z.infer<typeof PlaceCells>;

/** Puts one cell of a batch into each of the named boxes, all or none, and marks the job as done. */
export function placeCells(desk: Desk, input: Placing): Result<BoxesChanged, Refusal> {
  const codes = readBoxCodes(input.boxes);
  if (codes === null) return refuse({ kind: 'box-codes-unreadable', field: 'boxes', text: input.boxes });
  if (input.ids.length < codes.length) return refuse({ kind: 'wrong-number-of-ids', needed: codes.length });
  const step = ({ batches }: Tables) =>
    ({ did: 'place-cells', batch: batches.get(input.batchId)?.code ?? '', boxes: input.boxes }) as const;
  return desk.workbook.change(step, (tables) => {
    const batch = tables.batches.get(input.batchId);
    if (!batch) return refuse({ kind: 'batch-not-found' });
    const found = findBoxes(tables, codes);
    if (!found.ok) return found;
    const timetable = timetableOf(tables, batch);
    const refusal = dayRefusal(timetable, input.placedOn) ?? countRefusal(tables, batch, codes.length);
    if (refusal) return refuse(refusal);
    const emptied = found.value.flatMap((box) => justEmptied(tables, box, input.placedOn));
    write(tables, desk, input, found.value);
    markPlaced(tables, desk, batch, input.placedOn);
    keepTally(tables, batch.id);
    const reader = new BoxReader(tables, desk.today);
    return ok({
      boxes: found.value.map((box) => reader.line(box)),
      notices: [...placingNotices(desk, timetable, input.placedOn), ...emptied],
    });
  });
}

function findBoxes(tables: Tables, codes: readonly string[]): Result<readonly MatingBox[], Refusal> {
  const boxes: MatingBox[] = [];
  for (const code of codes) {
    const box = tables.boxes.where({ code })[0];
    if (!box) return refuse({ kind: 'box-not-found', field: 'boxes', code });
    if (box.retiredOn !== null) return refuse({ kind: 'box-retired', field: 'boxes', box: code });
    const held = tables.placements.where({ boxId: box.id, endedOn: null })[0];
    if (held) {
      const batch = tables.batches.get(held.batchId)?.code ?? '';
      return refuse({ kind: 'box-holds-a-cell', field: 'boxes', box: code, batch, since: held.placedOn });
    }
    const queen = tables.queens.where({ boxId: box.id, place: 'in-box' })[0]?.number;
    if (queen !== undefined) return refuse({ kind: 'box-holds-a-queen', field: 'boxes', box: code, queen });
    boxes.push(box);
  }
  return ok(boxes.toSorted((a, b) => a.walkOrder - b.walkOrder));
}

/** Cells can be moved once they are sealed, and never after the last day on which a queen may come out. */
function dayRefusal(timetable: Timetable, placedOn: string): Refusal | null {
  const on = dayOfIso(placedOn);
  const { latest } = timetable.emergence;
  if (on > latest) return { kind: 'emergence-passed', field: 'placedOn', latest: isoOfDay(latest) };
  const sealed = timetable.steps.find((step) => step.step === 'sealed' || step.step === 'count-sealed');
  if (sealed && on < sealed.earliest)
    return { kind: 'cells-not-ripe', field: 'placedOn', earliest: isoOfDay(sealed.earliest) };
  return null;
}

/** Only where the sealed cells were counted; where they were not, nobody can say that there are too few. */
function countRefusal(tables: Tables, batch: Batch, boxes: number): Refusal | null {
  const tally = tables.tallies.get(batch.id);
  if (!tally || tally.sealed === null) return null;
  const cells = tally.sealed - tally.placed;
  return boxes > cells
    ? { kind: 'more-boxes-than-sealed-cells', field: 'boxes', boxes, cells: Math.max(0, cells) }
    : null;
}

/** A box whose queen was taken out a day ago takes a cell less well; said, never a stop. */
function justEmptied(tables: Tables, box: MatingBox, placedOn: string): readonly Notice[] {
  const { freeFrom } = freeOutlook(tables, box, dayOfIso(placedOn));
  return freeFrom !== null && placedOn < freeFrom ? [{ kind: 'box-just-emptied', box: box.code, from: freeFrom }] : [];
}

function write(
  tables: Tables,
  desk: Desk,
  { batchId, barId, placedOn, ids }: Placing,
  boxes: readonly MatingBox[],
): void {
  boxes.forEach((box, index) => {
    const id = ids[index] ?? desk.ids.next();
    tables.placements.insert({ id, boxId: box.id, batchId, barId, placedOn, endedOn: null, endReason: null });
  });
}

function markPlaced(tables: Tables, { ids }: Desk, batch: Batch, placedOn: string): void {
  const step = 'place-cells';
  const inTimetable = timetableOf(tables, batch).steps.some((one) => one.step === step);
  if (!inTimetable || tables.stepsDone.where({ batchId: batch.id, step }).length > 0) return;
  tables.stepsDone.insert({ id: ids.next(), batchId: batch.id, step, doneOn: placedOn, note: null });
}

function placingNotices({ today }: Desk, timetable: Timetable, placedOn: string): readonly Notice[] {
  const on = dayOfIso(placedOn);
  const notices: Notice[] = [];
  if (on > timetable.placeDeadline)
    notices.push({ kind: 'emergence-near', earliest: isoOfDay(timetable.emergence.earliest) });
  if (on > today) notices.push({ kind: 'day-in-future', field: 'placedOn', day: placedOn });
  return notices;
}
