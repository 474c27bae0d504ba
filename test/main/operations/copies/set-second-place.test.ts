import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { setSecondPlace } from '../../../../main/operations/copies/set-second-place.ts';
import { refuse } from '../../../../shared/kernel/result.ts';
import { mustOk } from '../../../builders/desk.ts';
import { aLifecycle } from '../../../builders/lifecycle.ts';
import { aFolder } from '../../../builders/workbook-file.ts';

test('the newest copy goes to the second place as soon as it is chosen', () => {
  const lifecycle = aLifecycle();
  const stick = aFolder();
  mustOk(lifecycle.keeper.begin('Queens', null));
  mustOk(lifecycle.keeper.copies.make('by-hand'));
  expect(mustOk(setSecondPlace(lifecycle, { folder: stick })).secondPlace).toMatchObject({
    folder: stick,
    reachable: true,
  });
  expect(readdirSync(stick)).toHaveLength(2);
  expect(mustOk(setSecondPlace(lifecycle, { folder: null })).secondPlace).toBeNull();
  expect(readdirSync(stick)).toHaveLength(2);
});

test('a folder that is not there is refused beside its field', () => {
  const folder = join(aFolder(), 'gone');
  expect(setSecondPlace(aLifecycle(), { folder })).toEqual(
    refuse({ kind: 'folder-not-found', field: 'folder', folder }),
  );
});
