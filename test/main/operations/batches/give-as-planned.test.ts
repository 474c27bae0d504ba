import { expect, test } from 'vitest';
import { giveAsPlanned } from '../../../../main/operations/batches/give-as-planned.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aRow, aStart, refusalOf } from '../../../builders/running-batch.ts';

function aDeskWithBars(cellsPlanned: number | null = 41) {
  const desk = aDesk({ today: '2026-05-05' });
  mustOk(startBatch(desk, aStart({ cellsPlanned, bars: 3 })));
  const bars = desk.workbook.tables.bars.where({ batchId: 'batch-1' }).map(({ id }) => id);
  return { desk, bars };
}

test('bars that were not counted share what is left of the plan, on the day of the larvae', () => {
  const { desk, bars } = aDeskWithBars();
  mustOk(recordBarCounts(desk, aRow(desk, { barId: bars[1], countedOn: '2026-05-05', given: 20, taken: 15 })));
  const { batch } = mustOk(giveAsPlanned(desk, { batchId: 'batch-1' }));
  expect(batch.bars.map(({ counts }) => [counts.given, counts.taken])).toEqual([
    [11, null],
    [20, 15],
    [10, null],
  ]);
  expect(batch.tally.given).toBe(41);
  expect(desk.workbook.tables.stepsDone.where({ step: 'give-larvae' })).toMatchObject([{ doneOn: '2026-05-04' }]);
});

test('it is one step that undo takes back whole', () => {
  const { desk } = aDeskWithBars();
  mustOk(giveAsPlanned(desk, { batchId: 'batch-1' }));
  expect(mustOk(desk.workbook.undo()).words).toEqual({ did: 'give-as-planned', batch: '26-01' });
  expect(desk.workbook.tables.counts.all()).toEqual([]);
});

test('refused where more was taken than that, and where nothing was planned; nothing is written then', () => {
  const { desk, bars } = aDeskWithBars();
  mustOk(recordBarCounts(desk, aRow(desk, { barId: bars[2], countedOn: '2026-05-05', taken: 16 })));
  // 14, 14 and 13 would be given; 16 of the third were taken.
  expect(refusalOf(giveAsPlanned(desk, { batchId: 'batch-1' }))).toMatchObject({
    kind: 'more-taken-than-given',
    given: 13,
    taken: 16,
  });
  expect(desk.workbook.tables.counts.where({ stage: 'given' })).toEqual([]);
  const { desk: unplanned } = aDeskWithBars(null);
  expect(refusalOf(giveAsPlanned(unplanned, { batchId: 'batch-1' }))).toMatchObject({ kind: 'no-cells-planned' });
});
