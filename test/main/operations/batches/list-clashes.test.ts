import { describe, expect, test } from 'vitest';
import { listClashes } from '../../../../main/operations/batches/list-clashes.ts';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aDeskWithBoxes, aRow, aStart, onDay } from '../../../builders/running-batch.ts';

const ALL = { batchId: null };
const ENOUGH = { cellsPlanned: null };

describe('clashes', () => {
  test('a must-step on a day away is named with the day that would do', () => {
    const desk = onDay(aDeskWithBatch(), '2026-05-06');
    mustOk(saveSettings(desk, { awayDays: ['2026-05-14'] }));
    const { clashes, names } = listClashes(desk, ALL);
    // Larvae given Mon 4 May: cells ripe ten days later, the day before will do.
    expect(clashes).toContainEqual({
      kind: 'must-step-away',
      batch: 'batch-1',
      step: 'place-cells',
      on: '2026-05-14',
      reason: 'away',
      suits: ['2026-05-13'],
      batchIds: ['batch-1'],
    });
    expect(names).toMatchObject({ 'batch-1': '26-01' });
  });

  test('a weekday that does not suit is told from a day away', () => {
    const desk = onDay(aDeskWithBatch(), '2026-05-06');
    mustOk(saveSettings(desk, { workWeekdays: [5, 6, 7] }));
    const steps = listClashes(desk, ALL).clashes.flatMap((clash) => (clash.kind === 'must-step-away' ? [clash] : []));
    expect(steps.map(({ step, reason }) => [step, reason])).toContainEqual(['place-cells', 'weekday']);
  });

  test('more ripe cells than free boxes, until there are as many', () => {
    const desk = aDeskWithBatch('2026-05-06');
    const few = listClashes(desk, ALL).clashes.find((clash) => clash.kind === 'too-few-boxes');
    expect(few).toMatchObject({ on: '2026-05-14', cells: 12, freeBoxes: 0, deadline: '2026-05-14' });
    // Counted cells go before planned ones.
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12, taken: 7, countedOn: '2026-05-05' })));
    expect(listClashes(desk, ALL).clashes.find((clash) => clash.kind === 'too-few-boxes')).toMatchObject({ cells: 7 });
  });

  test('a box in use is free on the day after its queen is proved, or at once when it failed', () => {
    const desk = aDeskWithBoxes('2026-05-15');
    mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, anchorOn: '2026-05-12' })));
    // Placed on 22 May: K07 to K10 are empty, six boxes wait for their queens.
    const free = () =>
      listClashes(desk, ALL).clashes.flatMap((clash) => (clash.kind === 'too-few-boxes' ? [clash.freeBoxes] : []));
    expect(free()).toEqual([4]);
    const look = { id: 'l', boxId: 'box-1', lookedOn: '2026-05-15', strength: null, food: null, note: null };
    mustOk(recordLook(desk, { ...look, result: 'cell-failed', queen: null }));
    expect(free()).toEqual([5]);
  });

  test('what lies behind is no clash any more', () => {
    const desk = aDeskWithBatch();
    mustOk(saveSettings(desk, { awayDays: ['2026-05-14'] }));
    expect(listClashes(onDay(desk, '2026-05-15'), ALL).clashes).toEqual([]);
  });

  test('queens that fly before the first drones are mature', () => {
    const desk = aDeskWithBatch('2026-05-06');
    // 40 days from egg to mature drone [COLOSS BEEBOOK]: eggs of 20 April fly from 30 May; queens from 21 May.
    mustOk(saveSettings(desk, { firstDroneEggsOn: '2026-04-20' }));
    expect(listClashes(desk, ALL).clashes.find((clash) => clash.kind === 'no-drones-yet')).toMatchObject({
      fliesFrom: '2026-05-21',
      dronesMatureFrom: '2026-05-30',
      daysLater: 9,
    });
  });

  test('a builder bears less in a dearth', () => {
    const desk = aDeskWithBatch('2026-05-06');
    mustOk(saveSettings(desk, { seasonFactorPercent: 50 }));
    expect(listClashes(desk, ALL).clashes.find((clash) => clash.kind === 'too-many-cells')).toMatchObject({
      cells: 12,
      usualMost: 10,
      builders: 2,
    });
  });

  test('a job on a mother that builds cells for another batch, on a day they must be left alone', () => {
    const desk = aDeskWithBatch('2026-05-06');
    // H12 builds the cells of 26-01: hands off from 10 to 12 May. The comb of 26-02 would go into it on the 11th.
    const mother = { newBreeder: null, newBuilder: null, breederId: 'h12', anchorStep: 'insert-frame' } as const;
    mustOk(startBatch(desk, aStart({ id: 'batch-2', ...mother, anchorOn: '2026-05-11', cellsPlanned: null })));
    const { clashes, names } = listClashes(desk, { batchId: 'batch-2' });
    expect(names).toEqual({ 'batch-1': '26-01', 'batch-2': '26-02', h12: 'H12' });
    expect(clashes).toEqual([
      {
        kind: 'job-in-hands-off',
        batch: 'batch-2',
        other: 'batch-1',
        hiveId: 'h12',
        step: 'insert-frame',
        on: '2026-05-11',
        until: '2026-05-12',
        alternatives: ['2026-05-09', '2026-05-13'],
        batchIds: ['batch-2', 'batch-1'],
      },
    ]);
  });

  test('one batch names its own clashes only', () => {
    const desk = aDeskWithBatch('2026-05-06');
    mustOk(startBatch(desk, aStart({ id: 'batch-2', newBreeder: null, newBuilder: null, ...ENOUGH })));
    mustOk(saveSettings(desk, { awayDays: ['2026-05-14'] }));
    const own = listClashes(desk, { batchId: 'batch-2' }).clashes;
    expect(own.map(({ kind }) => kind)).toEqual(['must-step-away']);
    expect(own.every(({ batchIds }) => batchIds.includes('batch-2'))).toBe(true);
  });
});
