import { readBoxCodes } from '../../shared/kernel/box-codes.ts';
import type { LookResult } from '../../shared/model/look.ts';
import type { Step } from '../../shared/model/step.ts';
import { closeBatch } from '../operations/batches/close-batch.ts';
import { dropStep } from '../operations/batches/drop-step.ts';
import { editBatch } from '../operations/batches/edit-batch.ts';
import { getBatch } from '../operations/batches/get-batch.ts';
import { markStep } from '../operations/batches/mark-step.ts';
import { recordBarCounts } from '../operations/batches/record-bar-counts.ts';
import { recordLoss } from '../operations/batches/record-loss.ts';
import { startBatch } from '../operations/batches/start-batch.ts';
import { endPlacement } from '../operations/boxes/end-placement.ts';
import { placeCells } from '../operations/boxes/place-cells.ts';
import { recordLook } from '../operations/boxes/record-look.ts';
import type { Desk } from '../operations/operation.ts';
import { nextQueenNumber } from '../operations/queen-numbers.ts';
import type { Chance } from './chance.ts';
import type { BatchStory } from './story.ts';
import { hiveId, need } from './story-needs.ts';

/** Told to the end, or only what had happened before a day (that day's jobs stay open). */
type Until = 'to-the-end' | string;

const BAR_OF_CELLS = 12;
const CAP_SHARE = 0.93;
const EMERGENCE_SHARE = 0.9;

/** One batch, from its form to its last look, through the operations. */
export function tellBatch(desk: Desk, chance: Chance, story: BatchStory, until: Until): void {
  const before = (day: string) => until === 'to-the-end' || day < until;
  const batchId = begin(desk, story);
  const dayOf = (step: Step) =>
    getBatch(desk, { batchId })?.timetable.lines.find((line) => line.step === step)?.expected;
  markRunUp(desk, batchId, before);
  const [given, taken, sealed] = [dayOf('give-larvae'), dayOf('count-taken'), dayOf('count-sealed')];
  if (!given || !taken || !sealed) throw new Error('a batch without days to count on');
  const counted = { given: before(given), taken: before(taken), sealed: before(sealed) };
  countBars(desk, chance, batchId, story, { given, taken, sealed }, counted);
  if (story.droppedCheck !== undefined) dropCheck(desk, batchId, sealed, story.droppedCheck);
  else if (!story.forgotCheck) markSteps(desk, batchId, ['check-own-cells'], before);
  const placing = dayOf('place-cells');
  if (placing && before(placing) && story.boxes !== '') {
    markBetween(desk, batchId, before);
    const ids = (readBoxCodes(story.boxes) ?? []).map(() => desk.ids.next());
    need(placeCells(desk, { batchId, boxes: story.boxes, ids, placedOn: placing, barId: null }));
    lookIntoBoxes(desk, chance, batchId, story, { before, dayOf });
  }
  if (story.tornDown !== undefined) sayTornDown(desk, batchId, story.tornDown);
  const closedOn = dayOf('give-up') ?? sealed;
  if (until !== 'to-the-end') return;
  if (story.boxes !== '') freeBoxes(desk, batchId, closedOn);
  need(closeBatch(desk, { batchId, closedOn: story.boxes === '' ? sealed : closedOn, lesson: story.lesson }));
}

function begin(desk: Desk, story: BatchStory): string {
  const id = desk.ids.next();
  need(
    startBatch(desk, {
      id,
      code: null,
      method: story.method,
      methodCopyId: null,
      comb: story.comb,
      builderType: 'queenless',
      breederId: hiveId(story.breeder),
      builderId: hiveId(story.builder),
      anchorStep: 'give-larvae',
      anchorOn: story.larvaeOn,
      larvaAgeFromHours: null,
      larvaAgeToHours: null,
      sealedCelsius: null,
      cellsPlanned: story.cells,
      practice: story.practice ?? false,
      note: story.note,
      newBreeder: null,
      newBuilder: null,
      bars: Math.ceil(story.cells / BAR_OF_CELLS),
    }),
  );
  if (story.note !== null)
    need(editBatch(desk, { batchId: id, note: story.note, practice: story.practice ?? false, lesson: null }));
  return id;
}

/** Jobs done on their day: those before the larvae, and those between the counts and the boxes. */
function markRunUp(desk: Desk, batchId: string, before: (day: string) => boolean): void {
  markSteps(desk, batchId, ['feed-start', 'insert-frame', 'make-queenless'], before);
}

function markBetween(desk: Desk, batchId: string, before: (day: string) => boolean): void {
  markSteps(desk, batchId, ['stock-boxes', 'set-out'], before);
}

function markSteps(desk: Desk, batchId: string, steps: readonly Step[], before: (day: string) => boolean): void {
  for (const line of getBatch(desk, { batchId })?.timetable.lines ?? [])
    if (steps.includes(line.step) && line.state !== 'done' && before(line.expected))
      need(markStep(desk, { id: desk.ids.next(), batchId, step: line.step, doneOn: line.expected, note: null }));
}

function dropCheck(desk: Desk, batchId: string, droppedOn: string, reason: string): void {
  need(dropStep(desk, { id: desk.ids.next(), batchId, step: 'check-own-cells', droppedOn, reason }));
}

function sayTornDown(desk: Desk, batchId: string, cells: number): void {
  need(recordLoss(desk, { id: `loss of ${batchId}`, batchId, stage: 'taken', reason: 'torn-down', cells }));
}

interface CountDays<Value> {
  readonly given: Value;
  readonly taken: Value;
  readonly sealed: Value;
}

function countBars(
  desk: Desk,
  chance: Chance,
  batchId: string,
  story: BatchStory,
  days: CountDays<string>,
  counted: CountDays<boolean>,
): void {
  const bars = getBatch(desk, { batchId })?.bars ?? [];
  const take = story.take === 0 ? 0 : chance.around(story.take, 0.2);
  const cap = chance.around(CAP_SHARE, 0.08);
  const boxes = readBoxCodes(story.boxes)?.length ?? 0;
  bars.forEach((bar, index) => {
    const cells = Math.floor(story.cells / bars.length) + (index < story.cells % bars.length ? 1 : 0);
    // A story that fills its boxes needs as many sealed cells; chance alone could leave it short.
    const least = Math.min(cells, Math.ceil(boxes / bars.length));
    const taken = story.take === 0 ? 0 : Math.max(least, chance.of(cells, take));
    const sealed = Math.max(Math.min(least, taken), chance.of(taken, cap));
    const row = { batchId, barId: bar.barId, removed: null };
    if (counted.given)
      need(recordBarCounts(desk, { ...row, countedOn: days.given, given: cells, taken: null, sealed: null }));
    if (counted.taken)
      need(recordBarCounts(desk, { ...row, countedOn: days.taken, given: cells, taken, sealed: null }));
    if (counted.sealed) need(recordBarCounts(desk, { ...row, countedOn: days.sealed, given: cells, taken, sealed }));
  });
}

interface LookDays {
  readonly before: (day: string) => boolean;
  readonly dayOf: (step: Step) => string | undefined;
}

const FAILED_AFTER_EMERGENCE: readonly LookResult[] = ['none', 'none', 'none', 'drone-layer', 'gone'];

function lookIntoBoxes(
  desk: Desk,
  chance: Chance,
  batchId: string,
  story: BatchStory,
  { before, dayOf }: LookDays,
): void {
  const mating = chance.around(story.mating, 0.2);
  const emergence = chance.around(EMERGENCE_SHARE, 0.1);
  const [check, first, proof] = [dayOf('emergence-check'), dayOf('first-look'), dayOf('sealed-brood-look')];
  for (const placement of getBatch(desk, { batchId })?.placements ?? []) {
    const look = (on: string | undefined, result: LookResult, mark = false) => {
      if (on !== undefined && before(on)) recordOne(desk, placement.boxId, on, result, mark);
    };
    if (!chance.happens(emergence)) {
      look(check, 'cell-failed');
      continue;
    }
    look(check, 'out');
    const mated = chance.happens(mating);
    const fate = chance.pick(FAILED_AFTER_EMERGENCE);
    look(first, mated ? (chance.happens(0.8) ? 'laying' : 'queen') : fate === 'drone-layer' ? 'laying' : fate);
    if (mated) look(proof, 'proved', true);
    else if (fate === 'drone-layer') look(proof, fate);
  }
  for (const step of ['emergence-check', 'first-look', 'sealed-brood-look'] as const) {
    const on = dayOf(step);
    if (on && before(on)) need(markStep(desk, { id: desk.ids.next(), batchId, step, doneOn: on, note: null }));
  }
}

function recordOne(desk: Desk, boxId: string, lookedOn: string, result: LookResult, mark: boolean): void {
  const { tables } = desk.workbook;
  const number = nextQueenNumber(tables, Number(lookedOn.slice(0, 4)));
  const queen = mark ? { id: desk.ids.next(), number } : null;
  const look = { id: desk.ids.next(), boxId, lookedOn, result, strength: null, food: null, note: null };
  need(recordLook(desk, { ...look, queen }));
}

function freeBoxes(desk: Desk, batchId: string, endedOn: string): void {
  for (const { placementId, lastResult } of getBatch(desk, { batchId })?.placements ?? [])
    need(endPlacement(desk, { placementId, endedOn, reason: lastResult === 'proved' ? 'caught' : 'failed' }));
}
