import { describe, expect, test } from 'vitest';
import { markStep } from '../../../../main/operations/batches/mark-step.ts';
import { moveStep } from '../../../../main/operations/batches/move-step.ts';
import { previewSlip } from '../../../../main/operations/batches/preview-slip.ts';
import { recordObservation } from '../../../../main/operations/batches/record-observation.ts';
import { exportCalendar } from '../../../../main/operations/files/export-calendar.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { printLabels } from '../../../../main/operations/print/print-labels.ts';
import type { SlipChange, SlipView } from '../../../../shared/contract/slip.ts';
import { anObservation } from '../../../builders/batch.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, refusalOf } from '../../../builders/running-batch.ts';

const seen = (changes: Parameters<typeof anObservation>[0] = {}): SlipChange => ({
  kind: 'see',
  change: anObservation({ id: 'seen', ...changes }),
});
const marked = (changes: object): SlipChange => ({
  kind: 'mark',
  change: { id: 'm', batchId: 'batch-1', step: 'give-larvae', doneOn: '2026-05-04', note: null, ...changes },
});
const moved = (changes: object): SlipChange => ({
  kind: 'move',
  change: { id: 'mv', batchId: 'batch-1', step: 'check-own-cells', movedTo: '2026-05-09', reason: '', ...changes },
});
const line = (slip: SlipView, step: string) => slip.lines.find((one) => one.step === step);
const print = (desk: Desk) =>
  printLabels(desk, {
    batchId: 'batch-1',
    boxIds: null,
    sheet: 'a4-3x7-63.5x38.1',
    startAt: 1,
    qr: false,
    pencilLine: false,
    outline: false,
  });

describe('a slip before it is saved', () => {
  test('larvae that were older bring every open day forward; a done step is locked', () => {
    const desk = aDeskWithBatch('2026-05-06');
    mustOk(markStep(desk, { id: 'g', batchId: 'batch-1', step: 'give-larvae', doneOn: '2026-05-04', note: null }));
    // Larvae of two days instead of one emerge a day earlier: 15 days and 3.5 to 16 from the egg [COLOSS BEEBOOK].
    const slip = mustOk(
      previewSlip(desk, seen({ what: 'larva-age-note', seenOn: '2026-05-04', fromHours: 48, toHours: 48 })),
    );
    expect(line(slip, 'place-cells')).toMatchObject({
      was: { expected: '2026-05-14' },
      becomes: { expected: '2026-05-13' },
      movesBy: -1,
      changed: true,
      locked: false,
    });
    expect(line(slip, 'give-larvae')).toMatchObject({ movesBy: 0, changed: false, locked: true });
    expect(slip.otherStepsMoved).toBeGreaterThan(3);
    expect(desk.workbook.tables.observations.all()).toEqual([]);
  });

  test('is what the change then does', () => {
    const desk = aDeskWithBatch('2026-05-06');
    const change = anObservation({
      id: 'seen',
      what: 'larva-age-note',
      seenOn: '2026-05-04',
      fromHours: 48,
      toHours: 60,
    });
    const slip = mustOk(previewSlip(desk, { kind: 'see', change }));
    const { batch } = mustOk(recordObservation(desk, change));
    expect(batch.timetable.lines.map(({ step, expected }) => [step, expected])).toEqual(
      slip.lines.map(({ step, becomes }) => [step, becomes?.expected]),
    );
  });

  test('names the boxes whose printed label would be out of date, and none that was never printed', async () => {
    const desk = aDeskWithBoxes('2026-05-15');
    const late = seen({ what: 'emerged-hole', seenOn: '2026-05-15' });
    expect(mustOk(previewSlip(desk, late)).labelsOutOfDate).toEqual([]);
    mustOk(await print(desk));
    expect(mustOk(previewSlip(desk, late)).labelsOutOfDate).toEqual(['K01', 'K02', 'K03', 'K04', 'K05', 'K06']);
  });

  test('counts the entries of a calendar file that would be out of date', () => {
    const desk = aDeskWithBoxes('2026-05-15');
    const older = seen({ what: 'larva-age-note', seenOn: '2026-05-04', fromHours: 48, toHours: 60 });
    expect(mustOk(previewSlip(desk, older)).calendarEntriesOutOfDate).toBe(0);
    mustOk(exportCalendar(desk, { batchId: null, alarm: 'none' }));
    // Emergence, its check, setting out, hands off, both looks and the giving up; jobs that are done stay.
    const { lines, calendarEntriesOutOfDate } = mustOk(previewSlip(desk, older));
    const given = lines.filter(({ kind, step }) => kind === 'job' || kind === 'hands-off' || step === 'emergence');
    const ahead = given.filter(({ changed, was }) => changed && was && was.latest >= '2026-05-15');
    expect(calendarEntriesOutOfDate).toBe(ahead.length);
    expect(ahead.length).toBeGreaterThan(4);
    const onItsDay = marked({ step: 'emergence-check', doneOn: '2026-05-18' });
    expect(line(mustOk(previewSlip(desk, onItsDay)), 'emergence-check')?.was?.expected).toBe('2026-05-18');
    expect(mustOk(previewSlip(desk, onItsDay)).calendarEntriesOutOfDate).toBe(0);
  });

  test('a job done on its day moves no other step', () => {
    const slip = mustOk(
      previewSlip(aDeskWithBatch('2026-05-08'), marked({ step: 'check-own-cells', doneOn: '2026-05-08' })),
    );
    expect(slip.otherStepsMoved).toBe(0);
    expect(slip.labelsOutOfDate).toEqual([]);
  });

  test('larvae given a day later move the whole batch by a day', () => {
    const slip = mustOk(previewSlip(aDeskWithBatch('2026-05-05'), marked({ doneOn: '2026-05-05' })));
    const open = slip.lines.filter(({ step }) => step !== 'give-larvae');
    expect(new Set(open.map(({ movesBy }) => movesBy))).toEqual(new Set([1]));
  });

  test('facts that exclude each other are shown before they are saved', () => {
    const slip = mustOk(previewSlip(aDeskWithBatch('2026-05-20'), seen({ what: 'cells-open', seenOn: '2026-05-18' })));
    expect(slip.contradictions).toHaveLength(1);
    expect(slip.contradictions[0]?.other).toMatchObject({ kind: 'seen', what: 'cells-open' });
  });

  test('the first day of a batch not begun moves all of it, as far as one likes', () => {
    const desk = aDeskWithBatch('2026-05-01');
    const slip = mustOk(previewSlip(desk, moved({ step: 'give-larvae', movedTo: '2026-05-11' })));
    expect(line(slip, 'place-cells')).toMatchObject({ movesBy: 7, becomes: { expected: '2026-05-21' } });
    const { batch } = mustOk(
      moveStep(desk, { id: 'mv', batchId: 'batch-1', step: 'give-larvae', movedTo: '2026-05-11', reason: '' }),
    );
    expect(batch.batch.anchorOn).toBe('2026-05-11');
    expect(batch.timetable.lines.find(({ step }) => step === 'place-cells')).toMatchObject({ expected: '2026-05-21' });
  });

  test('taking a fact back is a slip too', () => {
    const desk = aDeskWithBatch('2026-05-06');
    const change = anObservation({
      id: 'seen',
      what: 'larva-age-note',
      seenOn: '2026-05-04',
      fromHours: 48,
      toHours: 60,
    });
    mustOk(recordObservation(desk, change));
    mustOk(markStep(desk, { id: 'g', batchId: 'batch-1', step: 'give-larvae', doneOn: '2026-05-05', note: null }));
    const unseen = mustOk(previewSlip(desk, { kind: 'unsee', change: { batchId: 'batch-1', observationId: 'seen' } }));
    // 84 hours old when given instead of 24: the deadline was 8 days after it, and is 10 [360 hours from the egg].
    expect(line(unseen, 'place-cells')?.movesBy).toBe(2);
    const step = { batchId: 'batch-1', step: 'give-larvae' } as const;
    const unmarked = mustOk(previewSlip(desk, { kind: 'unmark', change: step }));
    expect(line(unmarked, 'count-taken')?.movesBy).toBe(-1);
    expect(line(unmarked, 'give-larvae')).toMatchObject({ locked: false, becomes: { expected: '2026-05-04' } });
    const gone = previewSlip(desk, { kind: 'unsee', change: { batchId: 'batch-1', observationId: 'none' } });
    expect(refusalOf(gone)).toEqual({ kind: 'observation-not-found' });
  });

  test('what the change itself would refuse is refused beforehand, in the same words', () => {
    const desk = aDeskWithBatch('2026-05-08');
    expect(refusalOf(previewSlip(desk, moved({ movedTo: '2026-05-12' })))).toMatchObject({ kind: 'move-past-window' });
    expect(refusalOf(previewSlip(desk, marked({ step: 'count-taken', doneOn: '2026-05-03' })))).toMatchObject({
      kind: 'day-before-start',
    });
    expect(refusalOf(previewSlip(desk, seen({ what: 'larva-size' })))).toMatchObject({ kind: 'seen-needs-hours' });
    expect(refusalOf(previewSlip(desk, seen({ batchId: 'gone' })))).toEqual({ kind: 'batch-not-found' });
  });
});
