import { recordBarCounts } from '../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../main/operations/batches/start-batch.ts';
import { addBoxes } from '../../main/operations/boxes/add-boxes.ts';
import { placeCells } from '../../main/operations/boxes/place-cells.ts';
import type { Desk } from '../../main/operations/operation.ts';
import type { BatchStart } from '../../shared/contract/batches.ts';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { aDesk, mustOk } from './desk.ts';

/** A cut-comb start with larvae given on Mon 4 May 2026, one bar, from hives H03 and H12 that are new. */
export const aStart = (changes: Partial<BatchStart> = {}): BatchStart => ({
  id: 'batch-1',
  code: null,
  method: 'cut-comb-edge',
  methodCopyId: null,
  comb: 'drawn',
  builderType: 'queenless',
  breederId: null,
  builderId: null,
  newBreeder: { id: 'h03', code: 'H03' },
  newBuilder: { id: 'h12', code: 'H12' },
  anchorStep: 'give-larvae',
  anchorOn: '2026-05-04',
  larvaAgeFromHours: null,
  larvaAgeToHours: null,
  sealedCelsius: null,
  cellsPlanned: 12,
  practice: false,
  note: null,
  bars: 1,
  ...changes,
});

export const LARVAE_ON = '2026-05-04';
export const COUNTED_ON = '2026-05-09';
/** Ten days after larvae were given. */
export const PLACED_ON = '2026-05-14';

/** The same workbook on another day. */
export const onDay = (desk: Desk, today: IsoDay): Desk => ({ ...desk, today: dayOfIso(today) });

/** A desk on the placing day with the batch started. */
export function aDeskWithBatch(today: IsoDay = PLACED_ON): Desk {
  const desk = aDesk({ today });
  mustOk(startBatch(desk, aStart()));
  return desk;
}

export const barOf = (desk: Desk, batchId = 'batch-1'): string => {
  const bar = desk.workbook.tables.bars.where({ batchId })[0];
  if (!bar) throw new Error('no bar');
  return bar.id;
};

/** One typed row of counts; what is not named was not counted. */
export const aRow = (desk: Desk, changes: Partial<Parameters<typeof recordBarCounts>[1]> = {}) => ({
  batchId: 'batch-1',
  barId: desk.workbook.tables.bars.where({ batchId: changes.batchId ?? 'batch-1' })[0]?.id ?? 'no-bar',
  countedOn: COUNTED_ON,
  given: null,
  taken: null,
  removed: null,
  sealed: null,
  ...changes,
});

/** 12 given, 9 taken, 8 sealed; boxes K01 to K10; cells in K01 to K06. */
export function aDeskWithBoxes(today: IsoDay = PLACED_ON): Desk {
  const desk = aDeskWithBatch(today);
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, sealed: 8 })));
  const ids = Array.from({ length: 10 }, (_, index) => `box-${index + 1}`);
  mustOk(addBoxes(desk, { ids, codes: 'K01-K10', yardId: null, row: 'fence', boxType: 'mini' }));
  const placements = Array.from({ length: 6 }, (_, index) => `placement-${index + 1}`);
  mustOk(placeCells(desk, { batchId: 'batch-1', boxes: 'K01-K06', ids: placements, placedOn: PLACED_ON, barId: null }));
  return desk;
}

/** The kind of a refusal, for comparing. */
export const refusalOf = (result: { readonly ok: boolean; readonly refusal?: unknown }) =>
  result.ok ? null : result.refusal;
