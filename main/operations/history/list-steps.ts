import type { z } from 'zod';
import type { ListSteps, StepList } from '../../../shared/contract/history.ts';
import type { Desk } from '../operation.ts';
import { getUndoState } from './get-undo-state.ts';

/** The steps of the workbook, newest first, a page at a time. */
export function listSteps(desk: Desk, { before, limit }: z.infer<typeof ListSteps>): StepList {
  const found = desk.workbook.journal.steps(before, limit + 1);
  const undoableFrom = desk.workbook.journal.undoableFrom();
  return { ...getUndoState(desk), undoableFrom, steps: found.slice(0, limit), more: found.length > limit };
}
