import { describe, expect, test } from 'vitest';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { getToday } from '../../../../main/operations/today/get-today.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aStart, onDay } from '../../../builders/running-batch.ts';

const steps = (jobs: readonly { readonly step: string }[]) => jobs.map((job) => job.step);

describe('the day', () => {
  test('names what is due, with its hive and its window', () => {
    const view = getToday(onDay(aDeskWithBatch(), '2026-05-05'));
    expect(view.due.find((job) => job.step === 'count-taken')).toMatchObject({
      batch: '26-01',
      where: { kind: 'hive', code: 'H12' },
      expected: '2026-05-05',
      opens: 'counts',
      daysAfterLarvae: 1,
    });
    expect(view.minutesToday).toBeGreaterThan(0);
  });

  test('says as plainly what to leave alone, and until when', () => {
    const desk = aDeskWithBoxes('2026-05-20');
    const [boxes] = getToday(desk).leaveAlone;
    // Boxes are not opened in the hours in which queens fly, 11 to 16 [Büchler et al. 2013, sec. 2.2.2].
    expect(boxes).toMatchObject({
      what: 'K01–K06',
      hours: { from: 11, to: 16 },
      until: '2026-05-26',
      step: 'hands-off-mating',
    });
    const [builder] = getToday(onDay(aDeskWithBatch(), '2026-05-11')).leaveAlone;
    expect(builder).toMatchObject({ what: 'H12', hours: null, until: '2026-05-12', step: 'hands-off-cells' });
  });

  test('asks a look only of boxes that have not answered it', () => {
    const desk = aDeskWithBoxes('2026-05-28');
    for (const [box, result] of [
      ['box-1', 'laying'],
      ['box-2', 'none'],
      ['box-3', 'queen'],
    ] as const)
      mustOk(
        recordLook(desk, {
          id: box,
          boxId: box,
          lookedOn: '2026-05-28',
          result,
          strength: null,
          food: null,
          note: null,
          queen: null,
        }),
      );
    const first = getToday(desk).due.find((job) => job.step === 'first-look');
    expect(first?.where).toEqual({ kind: 'boxes', codes: ['K03', 'K04', 'K05', 'K06'] });
  });

  test('calls a job late after its window, and forgets it when nobody would open a hive for it any more', () => {
    const desk = aDeskWithBatch();
    expect(steps(getToday(onDay(desk, '2026-05-08')).late)).toContain('count-taken');
    expect(steps(getToday(onDay(desk, '2026-05-25')).late)).not.toContain('count-taken');
  });

  test('flags a job on a hive that another batch keeps shut, with the free days nearest to it', () => {
    const desk = aDeskWithBatch();
    // The builder of 26-01 is the mother of a batch whose comb goes in on a hands-off day.
    mustOk(
      startBatch(
        desk,
        aStart({
          id: 'batch-2',
          newBreeder: null,
          newBuilder: null,
          breederId: 'h12',
          anchorStep: 'insert-frame',
          anchorOn: '2026-05-11',
        }),
      ),
    );
    const job = getToday(onDay(desk, '2026-05-11')).due.find(
      (one) => one.batch === '26-02' && one.step === 'insert-frame',
    );
    expect(job?.clash).toEqual({ batch: '26-01', alternatives: ['2026-05-09', '2026-05-13'] });
  });

  test('orders jobs by yard and then as one walks', () => {
    const desk = aDeskWithBatch();
    for (const [id, name] of [
      ['y2', 'Wood'],
      ['y1', 'Home'],
    ] as const)
      mustOk(saveYard(desk, { id, name, note: null }));
    const hive = desk.workbook.tables.colonies.get('h12');
    if (hive) mustOk(saveHive(desk, { ...hive, yardId: 'y1' }));
    const view = getToday(onDay(desk, '2026-05-05'));
    expect(view.due.find((job) => job.step === 'count-taken')?.yard).toBe('Home');
  });

  test('is empty without a batch', () => {
    expect(getToday(aDesk())).toMatchObject({
      due: [],
      late: [],
      early: [],
      tomorrow: [],
      leaveAlone: [],
      bring: [],
      minutesToday: 0,
      anyBatch: false,
    });
  });
});
