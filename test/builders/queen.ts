import type { Queen } from '../../shared/model/queen.ts';

export const aQueen = (changes: Partial<Queen> = {}): Queen => ({
  id: 'queen-1',
  number: '26-001',
  bornIn: 2026,
  placementId: null,
  batchId: null,
  breederId: null,
  motherId: null,
  motherLine: null,
  markedOn: null,
  firstEggsOn: null,
  provedOn: null,
  place: 'in-box',
  boxId: null,
  colonyId: null,
  goneTo: null,
  note: null,
  ...changes,
});
