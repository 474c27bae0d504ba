import type { Colony, ColonyRole } from '../../shared/model/colony.ts';

export const aColony = (changes: Partial<Colony> = {}): Colony => ({
  id: 'colony-1',
  code: 'H01',
  name: null,
  yardId: null,
  place: null,
  motherLine: null,
  note: null,
  endedOn: null,
  ...changes,
});

export const aColonyRole = (changes: Partial<ColonyRole> = {}): ColonyRole => ({
  id: 'role-1',
  colonyId: 'colony-1',
  season: 2026,
  role: 'builder',
  ...changes,
});
