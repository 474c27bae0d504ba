import { expect, test } from 'vitest';
import { setRoles } from '../../../../main/operations/hives/set-roles.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

test('sets the roles of one season and leaves other seasons alone', () => {
  const desk = aDesk();
  fill(desk, ({ colonies }) => colonies.insert(aColony()));
  mustOk(setRoles(desk, { colonyId: 'colony-1', season: 2025, roles: ['builder'], ids: ['r1'] }));
  mustOk(setRoles(desk, { colonyId: 'colony-1', season: 2026, roles: ['builder', 'breeder'], ids: ['r2', 'r3'] }));
  const roles = mustOk(setRoles(desk, { colonyId: 'colony-1', season: 2026, roles: ['breeder', 'breeder'], ids: [] }));
  expect(roles.map((one) => [one.id, one.role])).toEqual([['r3', 'breeder']]);
  expect(desk.workbook.tables.colonyRoles.where({ season: 2025 })).toHaveLength(1);
});

test('refuses a hive that is gone', () => {
  expect(refusalOf(setRoles(aDesk(), { colonyId: 'gone', season: 2026, roles: [], ids: [] }))).toEqual({
    kind: 'hive-missing',
    field: 'colonyId',
  });
});
