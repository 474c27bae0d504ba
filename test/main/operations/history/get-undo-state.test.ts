import { expect, test } from 'vitest';
import { getUndoState } from '../../../../main/operations/history/get-undo-state.ts';
import { redo } from '../../../../main/operations/history/redo.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aYard } from '../../../builders/yard.ts';

const did = (step: { readonly words: unknown } | null) => step?.words ?? null;
const orchard = { did: 'save-yard', yard: 'Orchard' };
const heath = { did: 'save-yard', yard: 'Heath' };

test('names what an undo and a redo would do, at every turn', () => {
  const desk = aDesk();
  const state = () => [did(getUndoState(desk).undo), did(getUndoState(desk).redo)];
  expect(state()).toEqual([null, null]);
  mustOk(saveYard(desk, aYard({ id: 'y1', name: 'Orchard' })));
  mustOk(saveYard(desk, aYard({ id: 'y2', name: 'Heath' })));
  expect(state()).toEqual([heath, null]);
  mustOk(undo(desk));
  expect(state()).toEqual([orchard, heath]);
  mustOk(undo(desk));
  expect(state()).toEqual([null, orchard]);
  mustOk(redo(desk));
  expect(state()).toEqual([orchard, heath]);
  mustOk(saveYard(desk, aYard({ id: 'y3', name: 'Wood' })));
  mustOk(undo(desk));
  expect(state()).toEqual([orchard, { did: 'save-yard', yard: 'Wood' }]);
});
