import type { QueenPromise } from '../../shared/model/queen-promise.ts';

export const aPromise = (changes: Partial<QueenPromise> = {}): QueenPromise => ({
  id: 'promise-1',
  queenId: 'queen-1',
  promisedOn: '2026-05-30',
  promisedTo: 'Ines Berg',
  wantedOn: null,
  note: null,
  ...changes,
});
