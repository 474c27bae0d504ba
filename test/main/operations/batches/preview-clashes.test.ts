import { expect, test } from 'vitest';
import { previewClashes } from '../../../../main/operations/batches/preview-clashes.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aStart, refusalOf } from '../../../builders/running-batch.ts';

test('a builder that rests is named before the batch is saved', () => {
  const desk = aDeskWithBatch('2026-05-06');
  // 26-01 leaves H12 on 14 May and five days of rest follow; this one makes it queenless on 15 May.
  const list = mustOk(previewClashes(desk, aStart({ id: 'batch-2', builderId: 'h12', anchorOn: '2026-05-16' })));
  expect(list.clashes.find((clash) => clash.kind === 'builder-busy')).toMatchObject({
    other: 'batch-1',
    holdsUntil: '2026-05-14',
    freeFrom: '2026-05-20',
  });
  expect(list.names).toEqual({ 'batch-1': '26-01', h12: 'H12' });
  expect(desk.workbook.tables.batches.all()).toHaveLength(1);
});

test('clashes among the other batches are not repeated, and a form without a calendar is refused', () => {
  const desk = aDeskWithBatch('2026-05-06');
  const later = aStart({ id: 'batch-2', builderId: null, anchorOn: '2026-07-01', cellsPlanned: null });
  expect(mustOk(previewClashes(desk, later)).clashes).toEqual([]);
  expect(refusalOf(previewClashes(desk, aStart({ comb: null })))).toMatchObject({ kind: 'comb-needed' });
});
