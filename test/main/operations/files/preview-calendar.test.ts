import { expect, test } from 'vitest';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { exportCalendar } from '../../../../main/operations/files/export-calendar.ts';
import { previewCalendar } from '../../../../main/operations/files/preview-calendar.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';

const ALL = { batchId: null, alarm: 'none' } as const;

test('everything is new before the first file, nothing is stale after it, and looking changes nothing', () => {
  const desk = aDeskWithBatch('2026-05-04');
  const first = previewCalendar(desk, ALL);
  expect(first.lastExportedOn).toBeNull();
  expect(first.batches).toEqual([{ id: 'batch-1', code: '26-01' }]);
  expect(new Set(first.lines.map(({ change, before }) => `${change} ${before}`))).toEqual(new Set(['new null']));
  expect(previewCalendar(desk, ALL)).toEqual(first);
  mustOk(exportCalendar(desk, ALL));
  const after = previewCalendar(onDay(desk, '2026-05-06'), ALL);
  expect(after.lastExportedOn).toBe('2026-05-04');
  expect(new Set(after.lines.map(({ change }) => change))).toEqual(new Set(['same']));
});

test('a moved step is named as changed with the day the phone still shows', () => {
  const desk = aDeskWithBatch('2026-05-04');
  mustOk(exportCalendar(desk, ALL));
  const line = () => previewCalendar(desk, ALL).lines.find(({ uid }) => uid.includes('stock-boxes'));
  const day = line()?.from ?? '';
  const earlier = `2026-05-${String(Number(day.slice(8)) - 1).padStart(2, '0')}`;
  mustOk(moveStep(desk, { id: 'move-1', batchId: 'batch-1', step: 'stock-boxes', movedTo: earlier, reason: 'rain' }));
  expect(line()).toMatchObject({ change: 'changed', from: earlier, before: day, batch: '26-01' });
});

test('of a closed batch the days ahead are to be struck out', () => {
  const desk = aDeskWithBatch('2026-05-04');
  mustOk(exportCalendar(desk, ALL));
  const closing = onDay(desk, '2026-05-10');
  mustOk(closeBatch(closing, { batchId: 'batch-1', closedOn: '2026-05-10', lesson: null }));
  const { lines, batches } = previewCalendar(closing, ALL);
  expect(batches).toEqual([]);
  expect(new Set(lines.map(({ change }) => change))).toEqual(new Set(['cancelled']));
  expect(lines.every(({ to }) => to >= '2026-05-10')).toBe(true);
});
