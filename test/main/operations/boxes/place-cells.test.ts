import { expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { placeCells } from '../../../../main/operations/boxes/place-cells.ts';
import { retireBox } from '../../../../main/operations/boxes/retire-box.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aRow, PLACED_ON, refusalOf } from '../../../builders/running-batch.ts';

type Placing = Parameters<typeof placeCells>[1];
const placing = (changes: Partial<Placing> = {}): Placing => ({
  batchId: 'batch-1',
  boxes: 'K07',
  ids: ['p7', 'p8', 'p9', 'p10'],
  placedOn: PLACED_ON,
  barId: null,
  ...changes,
});

test('links box, cell and batch, keeps the tally and marks the job', () => {
  const desk = aDeskWithBoxes();
  const { boxes } = mustOk(placeCells(desk, placing({ boxes: 'K07 K08' })));
  expect(boxes.map(({ code, state }) => [code, state])).toEqual([
    ['K07', 'cell'],
    ['K08', 'cell'],
  ]);
  expect(desk.workbook.tables.tallies.get('batch-1')?.placed).toBe(8);
  expect(desk.workbook.tables.stepsDone.where({ step: 'place-cells' }).map((mark) => mark.doneOn)).toEqual([PLACED_ON]);
});

test.each([
  [
    'a box that holds a cell',
    { boxes: 'K07, K01' },
    { kind: 'box-holds-a-cell', field: 'boxes', box: 'K01', batch: '26-01', since: PLACED_ON },
  ],
  ['a box that is not there', { boxes: 'K99' }, { kind: 'box-not-found', field: 'boxes', code: 'K99' }],
  ['codes that cannot be read', { boxes: '?!' }, { kind: 'box-codes-unreadable', field: 'boxes', text: '?!' }],
  ['a box out of use', { boxes: 'K10' }, { kind: 'box-retired', field: 'boxes', box: 'K10' }],
  [
    'more boxes than sealed cells left',
    { boxes: 'K07-K09' },
    { kind: 'more-boxes-than-sealed-cells', field: 'boxes', boxes: 3, cells: 2 },
  ],
  [
    'a day after the last queen is out',
    { placedOn: '2026-05-18' },
    { kind: 'emergence-passed', field: 'placedOn', latest: '2026-05-17' },
  ],
  [
    'a day before the cells are sealed',
    { placedOn: '2026-05-06' },
    { kind: 'cells-not-ripe', field: 'placedOn', earliest: '2026-05-09' },
  ],
  ['a batch that is gone', { batchId: 'gone' }, { kind: 'batch-not-found' }],
  ['too few ids', { boxes: 'K07, K08', ids: ['one'] }, { kind: 'wrong-number-of-ids', needed: 2 }],
] as const)('refuses %s and places none', (_what, changes, refusal) => {
  const desk = aDeskWithBoxes();
  mustOk(retireBox(desk, { boxId: 'box-10', retiredOn: PLACED_ON }));
  expect(refusalOf(placeCells(desk, placing(changes as Partial<Placing>)))).toEqual(refusal);
  expect(desk.workbook.tables.placements.all()).toHaveLength(6);
});

test('places on the first and the last day on which it can be done', () => {
  for (const placedOn of ['2026-05-09', '2026-05-17']) mustOk(placeCells(aDeskWithBoxes(), placing({ placedOn })));
});

test('where sealed cells were not counted nobody can say that there are too few', () => {
  const desk = aDeskWithBoxes();
  mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9 })));
  mustOk(placeCells(desk, placing({ boxes: 'K07-K10' })));
});

test('the day of the first cells stays the day of the job; a freed box takes a cell again', () => {
  const desk = aDeskWithBoxes();
  mustOk(endPlacement(desk, { placementId: 'placement-1', endedOn: '2026-05-15', reason: 'failed' }));
  mustOk(placeCells(desk, placing({ boxes: 'K01', placedOn: '2026-05-15' })));
  expect(desk.workbook.tables.stepsDone.where({ step: 'place-cells' }).map((mark) => mark.doneOn)).toEqual([PLACED_ON]);
  expect(desk.workbook.tables.tallies.get('batch-1')?.placed).toBe(7);
});

test('keeps a placing past the safe day, and says that a queen may be out', () => {
  const { notices } = mustOk(placeCells(aDeskWithBoxes('2026-05-15'), placing({ placedOn: '2026-05-15' })));
  expect(notices).toEqual([{ kind: 'emergence-near', earliest: '2026-05-15' }]);
});

test('keeps a day to come and says so', () => {
  const { notices } = mustOk(placeCells(aDeskWithBoxes('2026-05-13'), placing()));
  expect(notices).toEqual([{ kind: 'day-in-future', field: 'placedOn', day: PLACED_ON }]);
});
