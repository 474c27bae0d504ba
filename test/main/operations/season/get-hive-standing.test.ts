import { expect, test } from 'vitest';
import { getHiveStanding } from '../../../../main/operations/season/get-hive-standing.ts';
import { aDeskWithCounted } from '../../../builders/counted-batches.ts';

const take = (builder: string, breeder: string, taken: number) => ({ builder, breeder, tally: { given: 30, taken } });

test('sets a strong builder against the rest', async () => {
  const desk = aDeskWithCounted([
    ...[27, 28, 27, 28].map((taken) => take('B1', 'M1', taken)),
    ...[15, 16, 14, 15].map((taken) => take('B2', 'M2', taken)),
    ...[20, 22].map((taken) => take('B3', 'M1', taken)),
    ...[21, 21].map((taken) => take('B3', 'M2', taken)),
  ]);
  const { asBuilder, asMother } = await getHiveStanding(desk, { colonyId: 'B1' });
  expect(asBuilder).toMatchObject([
    { stage: 'take', batches: 4, otherBatches: 8, against: { better: 'hive', certainty: 'as-good-as-certain' } },
  ]);
  expect(asMother).toEqual([]);
  const second = await getHiveStanding(desk, { colonyId: 'B2' });
  expect(second.asBuilder[0]?.against).toMatchObject({ better: 'rest', certainty: 'as-good-as-certain' });
});

test('says as readily that a mother cannot be told from the rest', async () => {
  const desk = aDeskWithCounted([
    ...[20, 22, 21].map((taken) => take('B1', 'M1', taken)),
    ...[21, 20, 22].map((taken) => take('B1', 'M2', taken)),
  ]);
  const { asMother } = await getHiveStanding(desk, { colonyId: 'M1' });
  expect(asMother[0]?.against?.certainty).toBe('cannot-tell');
});

test('a hive that stands alone is not compared; an unknown hive has no figures', async () => {
  const desk = aDeskWithCounted([take('B1', 'M1', 20)]);
  expect((await getHiveStanding(desk, { colonyId: 'M1' })).asMother).toMatchObject([{ batches: 1, against: null }]);
  expect(await getHiveStanding(desk, { colonyId: 'none' })).toEqual({ asBuilder: [], asMother: [] });
});
