import { describe, expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { acceptProposal } from '../../../../main/operations/boxes/accept-proposal.ts';
import { listBoxes } from '../../../../main/operations/boxes/list-boxes.ts';
import { placeCells } from '../../../../main/operations/boxes/place-cells.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import type { LookResult } from '../../../../shared/model/look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, aRow, aStart, onDay, refusalOf } from '../../../builders/running-batch.ts';

/** Cells were put into K01 to K06 on 14 May; the queens are expected out on 16 May 2026. */
function look(
  desk: Desk,
  lookedOn: string,
  result: LookResult,
  changes: { queen?: { id: string; number: string } } = {},
) {
  const id = `look-${lookedOn}-${result}`;
  const rest = { strength: null, food: null, note: null, queen: changes.queen ?? null };
  mustOk(recordLook(onDay(desk, lookedOn), { id, boxId: 'box-1', lookedOn, result, ...rest }));
}
const accept = (desk: Desk, kind: Parameters<typeof acceptProposal>[1]['kind'], on: string) =>
  acceptProposal(onDay(desk, on), { boxId: 'box-1', placementId: 'placement-1', kind, on });
const lineOn = (desk: Desk, on: string) => listBoxes(onDay(desk, on)).find((line) => line.id === 'box-1');

describe('accepting', () => {
  test('re-use takes the proved queen, counts her and frees the box two days later', () => {
    const desk = aDeskWithBoxes();
    look(desk, '2026-06-05', 'proved', { queen: { id: 'q', number: '26-001' } });
    expect(lineOn(desk, '2026-06-06')?.proposal).toMatchObject({ kind: 're-use', freeFrom: '2026-06-08' });
    const { boxes } = mustOk(accept(desk, 're-use', '2026-06-06'));
    expect(boxes[0]).toMatchObject({ state: 'free', freeFrom: '2026-06-08', layingWorkersFrom: '2026-06-27' });
    expect(desk.workbook.tables.placements.get('placement-1')).toMatchObject({ endReason: 'caught' });
    expect(desk.workbook.tables.queens.get('q')).toMatchObject({ place: 'caged', boxId: null });
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, proved: 1 });
  });

  test.each([
    ['unite', ['none', 'none'], 'united'],
    ['re-use', ['gone'], 'failed'],
    ['shake-out', ['drone-layer'], 'shaken-out'],
  ] as const)('%s after %j ends the cell’s story as %s, a loss', (kind, results, endReason) => {
    const desk = aDeskWithBoxes();
    for (const [index, result] of results.entries()) look(desk, `2026-05-${28 + index}`, result);
    mustOk(accept(desk, kind, '2026-05-30'));
    expect(desk.workbook.tables.placements.get('placement-1')).toMatchObject({ endedOn: '2026-05-30', endReason });
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, matingKnown: 1, proved: 0 });
    expect(lineOn(desk, '2026-05-30')?.state).toBe('free');
  });

  test('a box united because its cell stayed closed has failed, whatever becomes of its bees', () => {
    const desk = aDeskWithBoxes();
    look(desk, '2026-05-20', 'cell');
    mustOk(accept(desk, 'unite', '2026-05-20'));
    expect(desk.workbook.tables.placements.get('placement-1')?.endReason).toBe('failed');
  });

  test('an old virgin that is shaken out counts as not mated', () => {
    const desk = aDeskWithBoxes();
    look(desk, '2026-06-08', 'virgin');
    mustOk(accept(desk, 'shake-out', '2026-06-13'));
    expect(desk.workbook.tables.tallies.get('batch-1')).toMatchObject({ emerged: 1, matingKnown: 1, proved: 0 });
  });
});

test('ripe cells of another batch are offered to a box whose cell failed', () => {
  const desk = aDeskWithBoxes();
  look(desk, '2026-05-18', 'cell-failed');
  const hives = { newBreeder: null, newBuilder: null };
  mustOk(startBatch(desk, aStart({ id: 'batch-2', ...hives, anchorOn: '2026-05-11' })));
  const proposal = lineOn(desk, '2026-05-18')?.proposal;
  expect(proposal).toMatchObject({ kind: 'give-cell', cells: { batch: '26-02', on: '2026-05-21' } });
  mustOk(accept(desk, 'give-cell', '2026-05-18'));
  const placed = { batchId: 'batch-2', boxes: 'K01', ids: ['next'], placedOn: '2026-05-21', barId: null };
  expect(mustOk(placeCells(onDay(desk, '2026-05-21'), placed)).notices).toEqual([]);
});

test('a cell given the day after a queen was taken is kept with a notice', () => {
  const desk = aDeskWithBoxes();
  look(desk, '2026-06-05', 'proved');
  mustOk(accept(desk, 're-use', '2026-06-06'));
  const hives = { newBreeder: null, newBuilder: null };
  mustOk(startBatch(desk, aStart({ id: 'batch-2', ...hives, anchorOn: '2026-05-28' })));
  const place = (placedOn: string, boxes: string, id: string) =>
    mustOk(placeCells(onDay(desk, placedOn), { batchId: 'batch-2', boxes, ids: [id], placedOn, barId: null })).notices;
  expect(place('2026-06-07', 'K01', 'a')).toEqual([{ kind: 'box-just-emptied', box: 'K01', from: '2026-06-08' }]);
  expect(place('2026-06-07', 'K08', 'b')).toEqual([]);
});

test('nothing is ended once the box has changed since the proposal was shown', () => {
  const desk = aDeskWithBoxes();
  look(desk, '2026-05-28', 'gone');
  look(desk, '2026-05-29', 'virgin');
  const outdated = { kind: 'proposal-outdated', box: 'K01' };
  expect(refusalOf(accept(desk, 're-use', '2026-05-30'))).toEqual(outdated);
  const gone = { boxId: 'gone', placementId: 'placement-1', kind: 're-use', on: '2026-05-30' } as const;
  expect(refusalOf(acceptProposal(desk, gone))).toEqual({ kind: 'box-not-found', field: 'boxId', code: 'gone' });
  expect(desk.workbook.tables.placements.get('placement-1')?.endedOn).toBeNull();
});

test('look again becomes a job of its day, once', () => {
  const desk = aDeskWithBoxes();
  look(desk, '2026-05-29', 'virgin');
  expect(lineOn(desk, '2026-05-30')?.proposal).toMatchObject({ kind: 'look-again', on: '2026-06-02' });
  mustOk(accept(desk, 'look-again', '2026-05-30'));
  expect(lineOn(desk, '2026-05-30')).toMatchObject({ nextLookOn: '2026-06-02', proposal: null, state: 'virgin' });
  expect(refusalOf(accept(desk, 'look-again', '2026-05-30'))).toEqual({ kind: 'proposal-outdated', box: 'K01' });
});

test('cells that all have their boxes are offered to none', () => {
  const desk = aDeskWithBoxes();
  look(desk, '2026-05-18', 'cell-failed');
  const hives = { newBreeder: null, newBuilder: null };
  mustOk(startBatch(desk, aStart({ id: 'batch-2', ...hives, anchorOn: '2026-05-08' })));
  const counts = { batchId: 'batch-2', given: 12, taken: 1, sealed: 1, countedOn: '2026-05-13' };
  mustOk(recordBarCounts(desk, aRow(desk, counts)));
  expect(lineOn(desk, '2026-05-18')?.proposal?.kind).toBe('give-cell');
  const placed = { batchId: 'batch-2', boxes: 'K08', ids: ['p'], placedOn: '2026-05-18', barId: null };
  mustOk(placeCells(onDay(desk, '2026-05-18'), placed));
  expect(lineOn(desk, '2026-05-18')?.proposal?.kind).toBe('unite');
});
