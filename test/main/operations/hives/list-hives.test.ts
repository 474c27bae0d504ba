import { expect, test } from 'vitest';
import { listHives } from '../../../../main/operations/hives/list-hives.ts';
import { aDeskWithBatch, onDay } from '../../../builders/running-batch.ts';

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
