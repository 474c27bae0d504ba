import { expect, test } from 'vitest';
import { editBatch } from '../../../../main/operations/batches/edit-batch.ts';
import { getPlanForm } from '../../../../main/operations/season/get-plan-form.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { storedSettings } from '../../../../main/operations/stored-settings.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBoxes } from '../../../builders/running-batch.ts';

test('offers the methods used so far and the boxes that are free', () => {
  // Ten boxes, six of them holding a cell.
  expect(getPlanForm(aDeskWithBoxes())).toEqual({
    methods: [{ id: 'cut-comb-edge', label: 'cut-comb-edge', batches: 1 }],
    cellsPerBuilder: 20,
    freeBoxes: 4,
  });
  expect(getPlanForm(aDesk())).toMatchObject({ methods: [], freeBoxes: 0 });
});

test('leaves practice out, and takes the builder limit from the settings', () => {
  const desk = aDeskWithBoxes();
  mustOk(editBatch(desk, { batchId: 'batch-1', note: null, practice: true, lesson: null }));
  mustOk(saveSettings(desk, { ...storedSettings(desk.workbook.tables.settings), cellsPerBuilder: 15 }));
  expect(getPlanForm(desk)).toMatchObject({ methods: [], cellsPerBuilder: 15 });
});
