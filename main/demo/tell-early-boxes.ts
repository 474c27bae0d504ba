import { addDays, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { LookResult } from '../../shared/model/look.ts';
import { getBatch } from '../operations/batches/get-batch.ts';
import { markStep } from '../operations/batches/mark-step.ts';
import { recordLook } from '../operations/boxes/record-look.ts';
import type { Desk } from '../operations/operation.ts';
import type { Chance } from './chance.ts';
import type { BatchStory } from './story.ts';
import { need } from './story-needs.ts';
import { tellBatch } from './tell-batch.ts';

/** The set of mid-April, typed in afterwards from its paper; its eight boxes came to eight different ends. */
export const EARLY_BATCH: BatchStory = {
  method: 'larva-grafting',
  comb: null,
  larvaeOn: '2026-04-14',
  breeder: 'H07',
  builder: 'H12',
  cells: 14,
  boxes: 'M01-M08',
  take: 0.8,
  mating: 0.6,
  note: 'Typed in afterwards, from the paper of April.',
  lesson: null,
};
/** The cells stand in their boxes on this day; what follows is told look by look. */
const CELLS_ARE_IN = '2026-04-25';

interface EarlyLook {
  readonly box: string;
  readonly on: string;
  readonly result: LookResult;
  readonly strength?: number;
  readonly note?: string;
}

const LOOKS: readonly EarlyLook[] = [
  { box: 'M01', on: '2026-05-08', result: 'laying', strength: 4 },
  { box: 'M01', on: '2026-05-18', result: 'proved', note: 'Fine slab of brood.' },
  { box: 'M02', on: '2026-05-08', result: 'queen', strength: 3 },
  { box: 'M02', on: '2026-05-18', result: 'laying', note: 'Eggs at last.' },
  { box: 'M03', on: '2026-05-08', result: 'virgin', strength: 3 },
  { box: 'M03', on: '2026-05-18', result: 'queen', note: 'Plump now, but no eggs.' },
  { box: 'M04', on: '2026-05-08', result: 'none', strength: 2 },
  { box: 'M04', on: '2026-05-12', result: 'none', note: 'A cupful of bees left.' },
  { box: 'M05', on: '2026-05-08', result: 'laying', strength: 2 },
  { box: 'M05', on: '2026-05-18', result: 'drone-layer' },
  { box: 'M06', on: '2026-05-12', result: 'gone', note: 'Ants.' },
  { box: 'M07', on: '2026-05-08', result: 'virgin', strength: 4 },
  { box: 'M07', on: '2026-05-18', result: 'none' },
  { box: 'M08', on: '2026-05-08', result: 'laying', strength: 4 },
  { box: 'M08', on: '2026-05-18', result: 'proved' },
  // A cell of 26-02 that was found torn open; ripe cells of the next set are at hand.
  { box: 'K14', on: '2026-05-18', result: 'cell-failed', strength: 4 },
];

/** Tells the April set and its looks, so that the board of boxes has something in every column. */
export function tellEarlyBoxes(desk: Desk, chance: Chance): void {
  tellBatch(desk, chance, EARLY_BATCH, CELLS_ARE_IN);
  const { tables } = desk.workbook;
  for (const { box, on, result, strength = null, note = null } of LOOKS) {
    const boxId = tables.boxes.where({ code: box })[0]?.id;
    if (boxId === undefined) throw new Error(`no box ${box}`);
    const look = { id: desk.ids.next(), boxId, lookedOn: on, result, strength, food: null, note, queen: null };
    need(recordLook({ ...desk, today: dayOfIso(on) }, look));
  }
  markJobsDone(desk);
}

/** Every job of the set that lies before the last of its looks was done on its day. */
function markJobsDone(desk: Desk): void {
  const batch = desk.workbook.tables.batches.where({ anchorOn: EARLY_BATCH.larvaeOn })[0];
  if (!batch) throw new Error('no April set');
  const last = isoOfDay(addDays(dayOfIso(EARLY_BATCH.larvaeOn), 34));
  for (const line of getBatch(desk, { batchId: batch.id })?.timetable.lines ?? [])
    if (line.kind === 'job' && line.state !== 'done' && line.expected <= last)
      need(
        markStep(desk, { id: desk.ids.next(), batchId: batch.id, step: line.step, doneOn: line.expected, note: null }),
      );
}
