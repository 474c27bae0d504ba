import { expect, test } from 'vitest';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { exportCalendar } from '../../../../main/operations/files/export-calendar.ts';
import { getStaleCalendar } from '../../../../main/operations/files/get-stale-calendar.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aStart, onDay } from '../../../builders/running-batch.ts';

const ALL = { batchId: null };
const move = { id: 'move-1', batchId: 'batch-1', step: 'stock-boxes', reason: 'rain' } as const;

test('nothing is said before the first file, and nothing after it, whatever the reminder in it was', () => {
  const desk = aDeskWithBatch('2026-05-04');
  expect(getStaleCalendar(desk, ALL)).toBeNull();
  mustOk(exportCalendar(desk, { batchId: null, alarm: 'morning' }));
  expect(getStaleCalendar(desk, ALL)).toBeNull();
  expect(getStaleCalendar(onDay(desk, '2026-05-12'), ALL)).toBeNull();
});

test('a day that moved is named with the day the phone has, until it moves back or a new file is made', () => {
  const desk = aDeskWithBatch('2026-05-04');
  mustOk(exportCalendar(desk, { batchId: null, alarm: 'morning' }));
  const later = onDay(desk, '2026-05-06');
  const entry = desk.workbook.tables.calendarExports.all().find(({ id }) => id.includes('stock-boxes'));
  const movedTo = '2026-05-13';
  expect(entry?.fromOn).not.toBe(movedTo);
  mustOk(moveStep(later, { ...move, movedTo }));
  const stale = getStaleCalendar(later, { batchId: 'batch-1' });
  expect(stale?.since).toBe('2026-05-04');
  expect(stale?.lines).toMatchObject([{ batch: '26-01', change: 'changed', from: movedTo, before: entry?.fromOn }]);
  expect(getStaleCalendar(later, ALL)).toEqual(stale);
  mustOk(undo(later));
  expect(getStaleCalendar(later, ALL)).toBeNull();
  mustOk(moveStep(later, { ...move, movedTo }));
  mustOk(exportCalendar(later, { batchId: null, alarm: null }));
  expect(getStaleCalendar(later, ALL)).toBeNull();
  expect(desk.workbook.tables.calendarExports.all().every(({ alarm }) => alarm === 'morning')).toBe(true);
});

test('days that fall away are named, and a batch that never went to the phone is not', () => {
  const desk = aDeskWithBatch('2026-05-04');
  mustOk(exportCalendar(desk, { batchId: 'batch-1', alarm: 'none' }));
  const hives = { newBreeder: { id: 'h04', code: 'H04' }, newBuilder: { id: 'h13', code: 'H13' } };
  mustOk(startBatch(desk, aStart({ id: 'batch-2', ...hives })));
  expect(getStaleCalendar(desk, ALL)).toBeNull();
  expect(getStaleCalendar(desk, { batchId: 'batch-2' })).toBeNull();
  const closing = onDay(desk, '2026-05-10');
  mustOk(closeBatch(closing, { batchId: 'batch-1', closedOn: '2026-05-10', lesson: null }));
  const stale = getStaleCalendar(closing, ALL);
  expect(new Set(stale?.lines.map(({ change, batch }) => `${change} ${batch}`))).toEqual(new Set(['cancelled 26-01']));
});
