import { expect, test } from 'vitest';
import { recordFeeding } from '../../../../main/operations/feeding/record-feeding.ts';
import { removeFeeding } from '../../../../main/operations/feeding/remove-feeding.ts';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aFeeding, typedFeeding } from '../../../builders/feeding.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('a feeding that was none goes out, by name of its hive and day, and comes back with an undo', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(recordFeeding(desk, typedFeeding));
  mustOk(removeFeeding(desk, { feedingId: 'feeding-1' }));
  expect(desk.workbook.tables.feedings.all()).toEqual([]);
  expect(getUndoState(desk).undo?.words).toEqual({ did: 'remove-feeding', places: 'H01', on: '2026-05-14' });
  mustOk(undo(desk));
  expect(desk.workbook.tables.feedings.all()).toEqual([aFeeding()]);
  expect(refusalOf(removeFeeding(desk, { feedingId: 'gone' }))).toEqual({ kind: 'feeding-missing' });
});
