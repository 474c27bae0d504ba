import { expect, test } from 'vitest';
import { recordFeedback } from '../../../../main/operations/queens/record-feedback.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const told = {
  id: 'f',
  queenId: 'queen-1',
  toldOn: '2026-08-01',
  toldBy: 'Ines',
  outcome: 'superseded',
  note: 'by August',
} as const;

test('keeps what was told, and corrects it under the same id', () => {
  const desk = aDesk();
  fill(desk, ({ queens }) => queens.insert(aQueen()));
  mustOk(recordFeedback(desk, told));
  mustOk(recordFeedback(desk, { ...told, outcome: 'lays-well' }));
  expect(desk.workbook.tables.queenFeedback.all()).toEqual([{ ...told, outcome: 'lays-well' }]);
});

test('refuses feedback on a queen that is gone', () => {
  expect(refusalOf(recordFeedback(aDesk(), told))).toEqual({ kind: 'queen-missing' });
});
