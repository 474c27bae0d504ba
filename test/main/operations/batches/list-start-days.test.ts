import { describe, expect, test } from 'vitest';
import { listStartDays } from '../../../../main/operations/batches/list-start-days.ts';
import { previewClashes } from '../../../../main/operations/batches/preview-clashes.ts';
import { addBoxes } from '../../../../main/operations/boxes/add-boxes.ts';
import type { Desk } from '../../../../main/operations/operation.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import type { BatchStart } from '../../../../shared/contract/batches.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aStart, refusalOf } from '../../../builders/running-batch.ts';

/** The comb is put in on the start day: nothing of the batch lies before it. */
const fromComb = (changes: Partial<BatchStart> = {}) =>
  aStart({
    id: 'next',
    newBreeder: null,
    newBuilder: null,
    anchorStep: 'insert-frame',
    cellsPlanned: null,
    ...changes,
  });
const dayOf = (desk: Desk, on: string, input: BatchStart = fromComb()) => {
  const found = mustOk(listStartDays(desk, input)).days.find((day) => day.on === on);
  if (!found) throw new Error(`${on} is not in the span`);
  return found;
};
const troubles = (desk: Desk, on: string, input?: BatchStart) =>
  dayOf(desk, on, input).troubles.map((trouble) => trouble.kind);

describe('start days', () => {
  test('cover the coming 60 days, each with the days it gives', () => {
    const { days } = mustOk(listStartDays(aDesk({ today: '2026-05-01' }), fromComb()));
    expect(days).toHaveLength(60);
    expect(days[0]).toMatchObject({ on: '2026-05-01', rank: 1, placeOn: '2026-05-15', emergesOn: '2026-05-17' });
    expect(days.at(-1)?.on).toBe('2026-06-29');
  });

  test('a day whose must-step falls on days away fails, and says which step', () => {
    const desk = aDesk({ today: '2026-05-01' });
    // Comb in on 2 May: cells ripe on 16 May, or the day before.
    mustOk(saveSettings(desk, { awayDays: ['2026-05-15', '2026-05-16'] }));
    expect(dayOf(desk, '2026-05-02').troubles).toContainEqual({
      kind: 'must-step-away',
      step: 'place-cells',
      on: '2026-05-16',
    });
    expect(dayOf(desk, '2026-05-01')).toMatchObject({ troubles: [], shiftedSteps: ['place-cells'] });
  });

  test('the builder must be free and rested', () => {
    const desk = aDeskWithBatch('2026-05-06');
    // 26-01 holds H12 until 14 May and five days of rest follow: it may be made queenless, the day before the larvae,
    // from 20 May.
    const withH12 = fromComb({ builderId: 'h12' });
    expect(troubles(desk, '2026-05-16', withH12)).toContain('builder-taken');
    expect(troubles(desk, '2026-05-17', withH12)).toEqual([]);
    expect(troubles(desk, '2026-05-16')).toEqual([]);
    // Days offered as good have no clash over the builder, and the last taken one has.
    const clashes = (anchorOn: string) => mustOk(previewClashes(desk, { ...withH12, anchorOn })).clashes;
    expect(clashes('2026-05-17').map(({ kind }) => kind)).not.toContain('builder-busy');
    expect(clashes('2026-05-16').map(({ kind }) => kind)).toContain('builder-busy');
    expect(mustOk(listStartDays(desk, withH12)).names).toEqual({ 'batch-1': '26-01' });
  });

  test('boxes that another batch will fill are not counted twice', () => {
    const desk = aDeskWithBatch('2026-05-06');
    const ids = Array.from({ length: 20 }, (_, index) => `box-${index}`);
    mustOk(addBoxes(desk, { ids, codes: 'K01-K20', yardId: null, row: null, boxType: 'mini' }));
    // 26-01 takes twelve of the twenty from 14 May until its queens are proved on 6 June.
    expect(troubles(desk, '2026-05-07', fromComb({ cellsPlanned: 8 }))).toEqual([]);
    expect(troubles(desk, '2026-05-07', fromComb({ cellsPlanned: 9 }))).toEqual(['too-few-boxes']);
    expect(troubles(desk, '2026-05-24', fromComb({ cellsPlanned: 20 }))).toEqual([]);
    expect(troubles(desk, '2026-05-23', fromComb({ cellsPlanned: 20 }))).toEqual(['too-few-boxes']);
  });

  test('queens wait for drones', () => {
    const desk = aDesk({ today: '2026-05-01' });
    // Eggs of 1 May are mature drones on 10 June; comb in on 19 May flies from 9 June.
    mustOk(saveSettings(desk, { firstDroneEggsOn: '2026-05-01' }));
    expect(troubles(desk, '2026-05-19')).toEqual(['no-drones-yet']);
    expect(troubles(desk, '2026-05-20')).toEqual([]);
  });

  test('a form without a calendar is refused by its field', () => {
    expect(refusalOf(listStartDays(aDesk(), fromComb({ comb: null })))).toMatchObject({ kind: 'comb-needed' });
    expect(refusalOf(listStartDays(aDesk(), fromComb({ anchorStep: 'remove-queen' })))).toMatchObject({
      kind: 'step-not-in-method',
    });
  });
});
