import { expect, test } from 'vitest';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { recordHiveLook } from '../../../../main/operations/hives/record-hive-look.ts';
import { removeHiveLook } from '../../../../main/operations/hives/remove-hive-look.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aHiveLook } from '../../../builders/mating-box.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('takes one look out and no other, as a named step that an undo takes back; refuses one that is gone', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(recordHiveLook(desk, aHiveLook()));
  mustOk(recordHiveLook(desk, aHiveLook({ id: 'other', lookedOn: '2026-05-21' })));
  mustOk(removeHiveLook(desk, { lookId: 'hive-look-1' }));
  expect(desk.workbook.tables.hiveLooks.all().map(({ id }) => id)).toEqual(['other']);
  expect(getUndoState(desk).undo?.words).toEqual({ did: 'remove-hive-look', hive: aColony().code, on: '2026-05-20' });
  expect(refusalOf(removeHiveLook(desk, { lookId: 'hive-look-1' }))).toEqual({ kind: 'look-missing' });
  mustOk(undo(desk));
  expect(desk.workbook.tables.hiveLooks.get('hive-look-1')).toEqual(aHiveLook());
});
