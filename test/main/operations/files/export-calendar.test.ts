import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { closeBatch } from '../../../../main/operations/batches/close-batch.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { removeBatch } from '../../../../main/operations/batches/remove-batch.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { exportCalendar } from '../../../../main/operations/files/export-calendar.ts';
import { undo } from '../../../../main/operations/history/undo.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aStart, onDay, refusalOf } from '../../../builders/running-batch.ts';

const ALL = { batchId: null, alarm: 'none' } as const;

type Choice = Parameters<typeof exportCalendar>[1];

/** The file as ical.js reads it: each event's facts by its UID. */
function exported(desk: Desk, choice: Choice = ALL) {
  const { base64, events } = mustOk(exportCalendar(desk, choice));
  const parsed = ICAL.parse(Buffer.from(base64, 'base64').toString('utf8'));
  const read = new ICAL.Component(parsed).getAllSubcomponents('vevent').map((one) => {
    const event = new ICAL.Event(one);
    const facts = {
      from: event.startDate.toString(),
      until: event.endDate.toString(),
      summary: event.summary,
      location: event.location,
      sequence: Number(one.getFirstPropertyValue('sequence')),
      status: String(one.getFirstPropertyValue('status')),
      alarms: one.getAllSubcomponents('valarm').length,
    };
    return [event.uid, facts] as const;
  });
  expect(read.length).toBe(events);
  return new Map(read);
}
const uid = (step: string, batch = 'batch-1') => `${batch}.${step}@ripecell`;

describe('the calendar file', () => {
  test('has the jobs on their day, hands-off spans and the emergence over their whole window', () => {
    const file = exported(aDeskWithBatch('2026-05-04'));
    expect(file.get(uid('give-larvae'))).toMatchObject({ from: '2026-05-04', until: '2026-05-05', sequence: 0 });
    expect(file.get(uid('give-larvae'))?.summary).toMatch(/, 26-01$/);
    const handsOff = file.get(uid('hands-off-cells'));
    expect(handsOff?.summary).toMatch(/^Hands off: .*, 26-01$/);
    expect((handsOff?.until ?? '') > (handsOff?.from ?? '')).toBe(true);
    expect(handsOff?.location).toBe('H12');
    // Queens emerge 11 or 12 days after larvae of 12 to 24 hours were given (see the timetable's own tests): 15 May lies
    // in the window.
    const emergence = file.get(uid('emergence'));
    expect(`${emergence?.from} ${emergence?.until}`).toMatch(/^2026-05-1[3-5] 2026-05-(1[6-9]|2\d)$/);
    expect(file.has(uid('late-warning'))).toBe(false);
    expect([...file.values()].every(({ status, sequence }) => status === 'CONFIRMED' && sequence === 0)).toBe(true);
  });

  test('begun late leaves out what is past, and keeps what it once gave out', () => {
    const late = exported(aDeskWithBatch('2026-05-10'));
    expect(late.has(uid('give-larvae'))).toBe(false);
    expect(Math.min(...[...late.values()].map(({ until }) => Number(until.replaceAll('-', ''))))).toBeGreaterThan(
      20260510,
    );
    const desk = aDeskWithBatch('2026-05-04');
    exported(desk);
    expect(exported(onDay(desk, '2026-05-10')).get(uid('give-larvae'))).toMatchObject({ sequence: 0 });
  });

  test('made again without a change says the same with the same numbers', () => {
    const desk = aDeskWithBatch('2026-05-04');
    const first = exported(desk);
    expect(exported(onDay(desk, '2026-05-05'))).toEqual(first);
  });

  test('after a slip keeps every UID, moves the days, and raises SEQUENCE of what moved only', () => {
    const desk = aDeskWithBatch('2026-05-04');
    const before = exported(desk);
    mustOk(
      recordObservation(onDay(desk, '2026-05-11'), {
        id: 'seen-1',
        batchId: 'batch-1',
        what: 'cells-open',
        seenOn: '2026-05-11',
        fromHours: null,
        toHours: null,
        note: null,
      }),
    );
    const after = exported(onDay(desk, '2026-05-11'));
    const moved = [...before].filter(([id, facts]) => {
      const now = after.get(id);
      return now && (now.from !== facts.from || now.until !== facts.until);
    });
    expect(moved.length).toBeGreaterThan(3);
    for (const [id, facts] of before) {
      const now = after.get(id);
      expect(now, id).toBeDefined();
      const isMoved = now?.from !== facts.from || now?.until !== facts.until;
      expect(now?.sequence, id).toBe(isMoved ? 1 : 0);
    }
    expect((after.get(uid('emergence'))?.from ?? '') > (before.get(uid('emergence'))?.from ?? '')).toBe(true);
  });

  test('raises SEQUENCE each time a step is moved, and once for a new reminder', () => {
    const desk = aDeskWithBatch('2026-05-04');
    const day = exported(desk).get(uid('stock-boxes'))?.from ?? '';
    const earlier = `2026-05-${String(Number(day.slice(8)) - 1).padStart(2, '0')}`;
    const move = { batchId: 'batch-1', step: 'stock-boxes', reason: 'rain' } as const;
    mustOk(moveStep(desk, { ...move, id: 'move-1', movedTo: earlier }));
    expect(exported(desk).get(uid('stock-boxes'))).toMatchObject({ from: earlier, sequence: 1 });
    mustOk(moveStep(desk, { ...move, id: 'move-2', movedTo: day }));
    expect(exported(desk).get(uid('stock-boxes'))).toMatchObject({ from: day, sequence: 2 });
    const ringing = exported(desk, { ...ALL, alarm: 'morning' }).get(uid('stock-boxes'));
    expect(ringing).toMatchObject({ sequence: 3, alarms: 1 });
  });

  test('takes back what is still to come of a batch that was taken out, and gives it anew after an undo', () => {
    const desk = aDeskWithBatch('2026-05-04');
    const before = exported(desk);
    mustOk(removeBatch(desk, { batchId: 'batch-1' }));
    const cancelled = [...exported(desk)];
    expect(cancelled.map(([id]) => id).toSorted()).toEqual([...before.keys()].toSorted());
    expect(cancelled.every(([, { status, sequence }]) => status === 'CANCELLED' && sequence === 1)).toBe(true);
    mustOk(undo(desk));
    const again = [...exported(desk).values()];
    expect(again.length).toBe(before.size);
    expect(again.every(({ status, sequence }) => status === 'CONFIRMED' && sequence === 2)).toBe(true);
  });

  test('takes back what is still to come of a closed batch, again until its day is past, and never the past', () => {
    const desk = aDeskWithBatch('2026-05-04');
    const before = exported(desk);
    const closing = onDay(desk, '2026-05-10');
    mustOk(closeBatch(closing, { batchId: 'batch-1', closedOn: '2026-05-10', lesson: null }));
    const after = exported(closing);
    const ahead = [...before].filter(([, { until }]) => until > '2026-05-10').map(([id]) => id);
    expect(ahead.length).toBeGreaterThan(5);
    expect([...after.keys()].toSorted()).toEqual(ahead.toSorted());
    expect([...after.values()].every(({ status, sequence }) => status === 'CANCELLED' && sequence === 1)).toBe(true);
    expect(exported(closing)).toEqual(after);
    expect(refusalOf(exportCalendar(onDay(desk, '2026-08-01'), ALL))).toEqual({
      kind: 'no-calendar-events',
      field: 'batchId',
    });
  });

  test('takes back the events of a batch that is no longer in the workbook', () => {
    const desk = aDeskWithBatch('2026-05-04');
    exported(desk);
    fill(desk, (tables) => {
      for (const bar of tables.bars.all()) tables.bars.remove(bar.id);
      tables.batches.remove('batch-1');
    });
    expect([...exported(desk).values()].every(({ status }) => status === 'CANCELLED')).toBe(true);
  });

  test('of one batch holds that batch only', () => {
    const desk = aDeskWithBatch('2026-05-04');
    mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null })));
    const file = exported(desk, { batchId: 'batch-2', alarm: 'none' });
    expect(file.size).toBeGreaterThan(5);
    expect([...file.keys()].every((id) => id.startsWith('batch-2.'))).toBe(true);
    const { name } = mustOk(exportCalendar(desk, { batchId: 'batch-2', alarm: 'none' }));
    expect(name).toBe('ripecell-calendar-26-02.ics');
  });

  test('is refused where no batch is planned or running', () => {
    expect(refusalOf(exportCalendar(aDesk(), ALL))).toEqual({ kind: 'no-calendar-events', field: 'batchId' });
  });

  test('is no step of the history: an undo takes back what was typed before and lowers no number', () => {
    const desk = aDeskWithBatch('2026-05-04');
    exported(desk);
    const day = exported(desk).get(uid('stock-boxes'))?.from ?? '';
    const earlier = `2026-05-${String(Number(day.slice(8)) - 1).padStart(2, '0')}`;
    mustOk(moveStep(desk, { batchId: 'batch-1', step: 'stock-boxes', reason: 'rain', id: 'move-1', movedTo: earlier }));
    expect(exported(desk).get(uid('stock-boxes'))).toMatchObject({ from: earlier, sequence: 1 });
    expect(mustOk(desk.workbook.undo()).words).toMatchObject({ did: 'move-step' });
    expect(exported(desk).get(uid('stock-boxes'))).toMatchObject({ from: day, sequence: 2 });
  });
});
