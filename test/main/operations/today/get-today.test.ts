import { describe, expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { getToday } from '../../../../main/operations/today/get-today.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aRow, aStart, onDay } from '../../../builders/running-batch.ts';

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
      hiveId: null,
      boxes: ['K01', 'K02', 'K03', 'K04', 'K05', 'K06'],
      batchId: 'batch-1',
    });
    const [builder] = getToday(onDay(aDeskWithBatch(), '2026-05-11')).leaveAlone;
    expect(builder).toMatchObject({
      what: 'H12',
      hiveId: 'h12',
      boxes: [],
      hours: null,
      until: '2026-05-12',
      step: 'hands-off-cells',
    });
  });

  test('a job without a named hive, and one on boxes without a yard, are done nobody knows where', () => {
    const desk = aDesk({ today: '2026-05-05' });
    mustOk(startBatch(desk, aStart({ newBreeder: null, newBuilder: null })));
    const count = getToday(desk).due.find((job) => job.step === 'count-taken');
    expect(count).toMatchObject({ where: { kind: 'unknown' }, yard: null });
    const placing = getToday(onDay(desk, '2026-05-14')).due.find((job) => job.step === 'place-cells');
    expect(placing).toMatchObject({ where: { kind: 'unknown' }, yard: null });
    const look = getToday(aDeskWithBoxes('2026-05-28')).due.find((job) => job.step === 'first-look');
    expect(look).toMatchObject({ where: { kind: 'boxes' }, yard: null });
    // Without a cell in a box there is nothing to look into.
    expect(steps(getToday(onDay(desk, '2026-05-28')).due)).not.toContain('first-look');
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

  test('keeps apart what may be done early, what is due, and what comes tomorrow', () => {
    const desk = aDeskWithBatch();
    const before = getToday(onDay(desk, '2026-05-13'));
    expect(steps(before.early)).toEqual(['stock-boxes', 'place-cells']);
    expect(steps(before.tomorrow)).toEqual(['stock-boxes', 'place-cells']);
    expect(before.due).toEqual([]);
    const day = getToday(onDay(desk, '2026-05-14'));
    expect(steps(day.due)).toEqual(['stock-boxes', 'place-cells']);
    expect(day.tomorrow).toEqual([]);
    expect(day.due[0]?.where).toEqual({ kind: 'unknown' });
  });

  test.each([
    ['2026-05-04', 'give-larvae', 'counts'],
    ['2026-05-05', 'count-taken', 'counts'],
    ['2026-05-09', 'count-sealed', 'counts'],
    ['2026-05-14', 'place-cells', 'place-cells'],
    ['2026-05-14', 'stock-boxes', 'mark'],
    ['2026-05-03', 'make-queenless', 'mark'],
  ] as const)('on %s %s opens %s', (today, step, opens) => {
    expect(getToday(onDay(aDeskWithBatch(), today)).due.find((job) => job.step === step)?.opens).toBe(opens);
  });

  test('a job that is done is not asked for again', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 9, countedOn: '2026-05-05' })));
    expect(steps(getToday(onDay(desk, '2026-05-05')).due)).not.toContain('count-taken');
  });

  test('hands-off days of another hive are no clash; those of its own batch are one only for a late job', () => {
    const desk = aDeskWithBatch();
    const builder = { newBreeder: null, newBuilder: { id: 'h20', code: 'H20' } };
    mustOk(startBatch(desk, aStart({ id: 'batch-2', ...builder, anchorOn: '2026-05-06' })));
    // H12 is hands off from the 10th to the 12th.
    const view = getToday(onDay(desk, '2026-05-11'));
    expect(view.due.map((job) => [job.batch, job.step, job.clash])).toEqual([
      ['26-02', 'check-own-cells', null],
      ['26-02', 'count-sealed', null],
    ]);
    const late = view.late.find((job) => job.batch === '26-01' && job.step === 'check-own-cells');
    expect(late?.clash).toEqual({ batch: '26-01', alternatives: ['2026-05-09', '2026-05-13'] });
  });

  test('a job on boxes in two yards stands under both', () => {
    const desk = aDeskWithBoxes('2026-05-28');
    mustOk(saveYard(desk, { id: 'y1', name: 'Home', note: null }));
    mustOk(saveYard(desk, { id: 'y2', name: 'Mill', note: null }));
    fill(desk, ({ boxes }) => {
      for (const box of boxes.all())
        boxes.update({ ...box, yardId: box.id === 'box-2' ? 'y2' : box.id === 'box-3' ? null : 'y1' });
    });
    expect(getToday(desk).due.find((job) => job.step === 'first-look')?.yard).toBe('Home, Mill');
  });

  test('names the yard of what is to be left alone', () => {
    const desk = aDeskWithBatch();
    mustOk(saveYard(desk, { id: 'y1', name: 'Home', note: null }));
    const hive = desk.workbook.tables.colonies.get('h12');
    if (hive) mustOk(saveHive(desk, { ...hive, yardId: 'y1' }));
    expect(getToday(onDay(desk, '2026-05-11')).leaveAlone[0]?.yard).toBe('Home');
    const boxes = aDeskWithBoxes('2026-05-20');
    mustOk(saveYard(boxes, { id: 'y1', name: 'Home', note: null }));
    fill(boxes, (tables) => {
      for (const box of tables.boxes.all().slice(0, 2)) tables.boxes.update({ ...box, yardId: 'y1' });
    });
    expect(getToday(boxes).leaveAlone.map(({ what, yard }) => [what, yard])).toEqual([
      ['K01–K02', 'Home'],
      ['K03–K06', null],
    ]);
  });

  test('walks one yard after the other, and boxes and hives of a yard in the order of their numbers', () => {
    const desk = aDeskWithBatch();
    for (const [id, name] of [
      ['y2', 'Wood'],
      ['y1', 'Home'],
    ] as const)
      mustOk(saveYard(desk, { id, name, note: null }));
    const batches = [
      ['H10', 'y1'],
      ['H9', 'y1'],
      ['H1', 'y2'],
    ] as const;
    for (const [code, yardId] of batches) {
      mustOk(saveHive(desk, aColony({ id: code, code, yardId })));
      mustOk(startBatch(desk, aStart({ id: `of-${code}`, newBreeder: null, newBuilder: null, builderId: code })));
    }
    const due = getToday(onDay(desk, '2026-05-05')).due.filter((job) => job.step === 'count-taken');
    expect(due.map((job) => [job.yard, job.where.kind === 'hive' && job.where.code])).toEqual([
      [null, 'H12'],
      ['Home', 'H9'],
      ['Home', 'H10'],
      ['Wood', 'H1'],
    ]);
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

  test('sums the work of the coming week by day: minutes, what to bring, and whose jobs', () => {
    const desk = aDeskWithBatch();
    // Larvae of 4 May. On the 8th: own cells; the 9th: sealed cells; the 14th, six days on: boxes filled, cells moved.
    const { week } = getToday(onDay(desk, '2026-05-08'));
    expect(week.map(({ on, jobs }) => [on, jobs.map(({ step }) => step)])).toEqual([
      ['2026-05-08', ['check-own-cells']],
      ['2026-05-09', ['count-sealed']],
      ['2026-05-14', ['stock-boxes', 'place-cells']],
    ]);
    const last = week.at(-1);
    const steps = getToday(onDay(desk, '2026-05-14')).due;
    expect(last?.minutes).toBe(steps.reduce((sum, job) => sum + (job.minutes ?? 0), 0));
    expect(last?.materials.map(({ material }) => material)).toEqual(
      expect.arrayContaining(['mating boxes', 'cell cages']),
    );
    expect(last?.jobs[0]).toEqual({ batchId: 'batch-1', batch: '26-01', step: 'stock-boxes' });
  });

  test('what a later step has overtaken is no work of the week: boxes in use need no bees any more', () => {
    // Cells of 4 May in boxes since 14 May; no step before that was ever marked.
    const { week } = getToday(aDeskWithBoxes('2026-05-28'));
    expect(week[0]).toMatchObject({ on: '2026-05-28', jobs: [{ step: 'first-look' }] });
  });

  test('a job due since yesterday is work of today; the eighth day is not of this week', () => {
    const desk = aDeskWithBatch();
    const { week } = getToday(onDay(desk, '2026-05-06'));
    expect(week[0]).toMatchObject({ on: '2026-05-06', jobs: [{ step: 'count-taken' }] });
    expect(week.at(-1)?.on).toBe('2026-05-09');
    expect(getToday(onDay(desk, '2026-05-07')).week.flatMap(({ jobs }) => jobs.map(({ step }) => step))).not.toContain(
      'place-cells',
    );
  });
});
