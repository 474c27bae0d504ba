import { expect, test } from 'vitest';
import { endPlacement } from '../../../../main/operations/boxes/end-placement.ts';
import { getLookSheet } from '../../../../main/operations/boxes/get-look-sheet.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';

const sheet = (changes: object = {}) =>
  ({ batchId: 'batch-1', step: 'first-look', sheetDay: '2026-05-28', ...changes }) as const;

test('lists the boxes that wait for the look, in walking order, with what was typed that day', () => {
  const desk = aDeskWithBoxes('2026-05-28');
  mustOk(
    recordLook(desk, {
      id: 'l',
      boxId: 'box-2',
      lookedOn: '2026-05-28',
      result: 'laying',
      strength: 4,
      food: null,
      note: null,
      queen: null,
    }),
  );
  mustOk(
    recordLook(desk, {
      id: 'm',
      boxId: 'box-3',
      lookedOn: '2026-05-19',
      result: 'cell-failed',
      strength: null,
      food: null,
      note: null,
      queen: null,
    }),
  );
  mustOk(endPlacement(desk, { placementId: 'placement-6', endedOn: '2026-05-20', reason: 'failed' }));
  const view = getLookSheet(desk, sheet());
  expect(view.rows.map((row) => row.code)).toEqual(['K01', 'K02', 'K04', 'K05']);
  expect(view.rows[1]?.typed).toEqual({ id: 'l', result: 'laying', strength: 4, food: null, note: null });
  expect(view).toMatchObject({ batch: '26-01', nextQueenNumber: '26-001' });
  // A week later K02 has been answered and is not asked again.
  expect(
    getLookSheet(onDay(desk, '2026-06-04'), sheet({ sheetDay: '2026-06-04' })).rows.map((row) => row.code),
  ).toEqual(['K01', 'K04', 'K05']);
});

test('without a batch it lists every box that holds something', () => {
  expect(getLookSheet(aDeskWithBoxes(), sheet({ batchId: null, step: null })).rows).toHaveLength(6);
});
