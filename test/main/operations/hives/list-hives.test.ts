import { expect, test } from 'vitest';
import { listHives } from '../../../../main/operations/hives/list-hives.ts';
import { saveHive } from '../../../../main/operations/hives/save-hive.ts';
import { saveYard } from '../../../../main/operations/hives/save-yard.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

test('lists hives with their roles, and until when a builder must be left alone', () => {
  const desk = onDay(aDeskWithBatch(), '2026-05-11');
  expect(
    listHives(desk).hives.map(({ code, roles, handsOff, batchesFed, batchesMothered }) => [
      code,
      roles,
      handsOff?.until ?? null,
      batchesFed,
      batchesMothered,
    ]),
  ).toEqual([
    ['H03', ['breeder'], null, 0, 1],
    // Prepupae and young pupae, days 5.5 to 8.5 after larvae: no shaking, no turning [Wang et al. 2016].
    ['H12', ['builder'], '2026-05-12', 1, 0],
  ]);
  expect(listHives(onDay(desk, '2026-05-14')).hives[1]?.handsOff).toBeNull();
});

test('the last day of a hands-off span is still hands off, the next is not', () => {
  const desk = aDeskWithBatch();
  const builderOn = (day: string) => listHives(onDay(desk, day)).hives.find(({ code }) => code === 'H12');
  expect(builderOn('2026-05-12')?.handsOff?.until).toBe('2026-05-12');
  expect(builderOn('2026-05-13')?.handsOff).toBeNull();
});

test('names the yard of a hive, and says which hives have ended', () => {
  const desk = aDesk();
  mustOk(saveYard(desk, aYard()));
  mustOk(saveHive(desk, aColony({ yardId: 'yard-1' })));
  mustOk(saveHive(desk, aColony({ id: 'old', code: 'H02', endedOn: '2025-10-01' })));
  const { hives, yards } = listHives(desk);
  expect(hives.map(({ code, yard, ended }) => [code, yard, ended])).toEqual([
    ['H01', 'Orchard', false],
    ['H02', null, true],
  ]);
  expect(yards).toEqual([aYard()]);
});
