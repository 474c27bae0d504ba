import type { UndoState } from '../../../shared/contract/history.ts';
import type { Desk } from '../operation.ts';

/** What an undo would take back and a redo do again. */
export function getUndoState({ workbook: { journal } }: Desk): UndoState {
  return { undo: journal.toUndo(), redo: journal.toRedo() };
}
