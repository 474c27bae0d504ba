import { describe, expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { saveSettings } from '../../../../main/operations/settings/save-settings.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, aRow, aStart, refusalOf } from '../../../builders/running-batch.ts';

const second = { id: 'batch-2', newBreeder: null, newBuilder: null, breederId: 'h03' };

describe('starting a batch', () => {
  test('writes the batch, its bars and the hives that are new, with their roles, in one change', () => {
    const desk = aDesk({ today: '2026-05-04' });
    const { batch, notices } = mustOk(startBatch(desk, aStart({ bars: 2 })));
    expect(batch).toMatchObject({ code: '26-01', season: 2026, breeder: { code: 'H03' }, builder: { code: 'H12' } });
    expect(batch.bars.map((bar) => bar.number)).toEqual([1, 2]);
    expect(batch.tally.given).toBeNull();
    expect(notices).toEqual([]);
    const roles = desk.workbook.tables.colonyRoles.all().map(({ colonyId, role, season }) => [colonyId, role, season]);
    expect(roles).toEqual([
      ['h03', 'breeder', 2026],
      ['h12', 'builder', 2026],
    ]);
  });

  test('adds a hive named as mother and builder once, with both roles', () => {
    const desk = aDesk({ today: '2026-05-04' });
    mustOk(startBatch(desk, aStart({ newBuilder: { id: 'other', code: 'H03' } })));
    expect(desk.workbook.tables.colonies.all()).toHaveLength(1);
    expect(desk.workbook.tables.colonyRoles.all().map((one) => one.role)).toEqual(['breeder', 'builder']);
  });

  test('counts codes up within a season', () => {
    const desk = aDeskWithBatch();
    expect(mustOk(startBatch(desk, aStart(second))).batch.code).toBe('26-02');
    const next = aStart({ ...second, id: 'batch-3', anchorOn: '2027-05-04' });
    expect(mustOk(startBatch(desk, next)).batch.code).toBe('27-01');
  });

  test.each([
    ['a code that is taken', { code: '26-01' }, { kind: 'batch-code-taken', field: 'code', code: '26-01' }],
    ['a comb that is not said', { comb: null }, { kind: 'comb-needed', field: 'comb' }],
    [
      'a new hive under a known code',
      { newBreeder: { id: 'x', code: 'H12' } },
      { kind: 'hive-code-taken', field: 'newBreeder', code: 'H12' },
    ],
    ['a hive that is gone', { breederId: 'gone' }, { kind: 'hive-not-found', field: 'breederId' }],
    [
      'larva ages turned round',
      { larvaAgeFromHours: 30, larvaAgeToHours: 10 },
      { kind: 'larva-age-turned-round', field: 'larvaAgeHours', from: 30, to: 10 },
    ],
    [
      'larvae too old to become queens',
      { larvaAgeFromHours: 90, larvaAgeToHours: 120 },
      { kind: 'larva-age-impossible', field: 'larvaAgeHours', hours: 120 },
    ],
    ['a first day that is no step of the method', { anchorStep: 'cage-queen' }, { kind: 'step-not-in-method' }],
  ] as const)('refuses %s and writes nothing', (_what, changes, refusal) => {
    const desk = aDeskWithBatch();
    const result = startBatch(desk, aStart({ ...second, ...changes } as Parameters<typeof aStart>[0]));
    expect(refusalOf(result)).toMatchObject(refusal);
    expect(desk.workbook.tables.batches.all()).toHaveLength(1);
    expect(desk.workbook.tables.colonies.all()).toHaveLength(2);
  });

  test('refuses a builder that still holds cells, and takes it on the day they leave', () => {
    const desk = aDeskWithBatch();
    const onBuilder = (anchorOn: string) => startBatch(desk, aStart({ ...second, builderId: 'h12', anchorOn }));
    expect(refusalOf(onBuilder('2026-05-13'))).toEqual({
      kind: 'builder-in-use',
      field: 'builderId',
      builder: 'H12',
      batch: '26-01',
      until: '2026-05-14',
    });
    expect(mustOk(onBuilder('2026-05-14')).notices).toEqual([
      { kind: 'builder-resting', builder: 'H12', until: '2026-05-19' },
    ]);
  });

  test('takes a builder for an earlier batch whose cells leave on the day the next larvae come', () => {
    const desk = aDeskWithBatch();
    const before = startBatch(desk, aStart({ ...second, builderId: 'h12', anchorOn: '2026-04-24' }));
    expect(mustOk(before).notices).toEqual([]);
    expect(desk.workbook.tables.batches.all()).toHaveLength(2);
  });

  test('has nothing to say of a builder that has had its rest, nor of the usual number of cells', () => {
    // Cells out on 14 May, rest until the 19th; queenless on the 20th for larvae on the 21st.
    const on = (anchorOn: string) => aStart({ ...second, builderId: 'h12', anchorOn, cellsPlanned: 20 });
    expect(mustOk(startBatch(aDeskWithBatch(), on('2026-05-21'))).notices).toEqual([]);
    expect(mustOk(startBatch(aDeskWithBatch(), on('2026-05-20'))).notices).toEqual([
      { kind: 'builder-resting', builder: 'H12', until: '2026-05-19' },
    ]);
  });

  test('takes a code of the person’s own', () => {
    expect(mustOk(startBatch(aDeskWithBatch(), aStart({ ...second, code: 'Anna 1' }))).batch.code).toBe('Anna 1');
  });

  test('keeps many cells, and says that they are many', () => {
    const desk = aDesk({ today: '2026-05-04' });
    expect(mustOk(startBatch(desk, aStart({ cellsPlanned: 40 }))).notices).toEqual([
      { kind: 'many-cells-for-builder', cells: 40, usualMost: 20 },
    ]);
    mustOk(saveSettings(desk, { seasonFactorPercent: 50 }));
    expect(mustOk(startBatch(desk, aStart({ ...second, cellsPlanned: 11 }))).notices).toEqual([
      { kind: 'many-cells-for-builder', cells: 11, usualMost: 10 },
    ]);
  });

  test('leaves the tally of other batches alone', () => {
    const desk = aDeskWithBatch();
    mustOk(recordBarCounts(desk, aRow(desk, { given: 12 })));
    mustOk(startBatch(desk, aStart(second)));
    expect(desk.workbook.tables.tallies.get('batch-1')?.given).toBe(12);
  });
});
