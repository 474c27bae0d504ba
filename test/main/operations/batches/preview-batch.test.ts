import { expect, test } from 'vitest';
import { previewBatch } from '../../../../main/operations/batches/preview-batch.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aStart, refusalOf } from '../../../builders/running-batch.ts';

test('dates the form without writing anything', () => {
  const desk = aDesk({ today: '2026-05-01' });
  const view = mustOk(previewBatch(desk, aStart({ anchorStep: 'insert-frame', anchorOn: '2026-05-01' })));
  // Drawn comb: larvae four days after it went in, cells moved ten days later (common practice, no source).
  expect(view.larvaeGivenOn).toBe('2026-05-05');
  expect(view.lines.find((line) => line.step === 'place-cells')?.expected).toBe('2026-05-15');
  expect(desk.workbook.tables.batches.all()).toEqual([]);
});

test('refuses what cannot be dated, by its field', () => {
  const desk = aDesk();
  expect(refusalOf(previewBatch(desk, aStart({ comb: null })))).toEqual({ kind: 'comb-needed', field: 'comb' });
  expect(refusalOf(previewBatch(desk, aStart({ anchorStep: 'remove-queen' })))).toMatchObject({
    kind: 'step-not-in-method',
  });
});
