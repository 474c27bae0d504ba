import type { Bar, Batch, Count, StepDone, StepDrop, StepMove } from '../../shared/model/batch.ts';
import type { Observation } from '../../shared/model/observation.ts';

/** A batch without hives; name `breederId` and `builderId` once those colonies are in the workbook. */
export const aBatch = (changes: Partial<Batch> = {}): Batch => ({
  id: 'batch-1',
  code: '26-01',
  season: 2026,
  method: 'larva-grafting',
  methodCopyId: null,
  comb: null,
  builderType: 'queenless',
  breederId: null,
  builderId: null,
  anchorStep: 'give-larvae',
  anchorOn: '2026-05-20',
  larvaAgeFromHours: null,
  larvaAgeToHours: null,
  sealedCelsius: null,
  cellsPlanned: 20,
  practice: false,
  note: null,
  lesson: null,
  closedOn: null,
  ...changes,
});

export const aBar = (changes: Partial<Bar> = {}): Bar => ({ id: 'bar-1', batchId: 'batch-1', number: 1, ...changes });

export const aCount = (changes: Partial<Count> = {}): Count => ({
  id: 'count-1',
  batchId: 'batch-1',
  barId: 'bar-1',
  stage: 'given',
  cells: 20,
  countedOn: '2026-05-20',
  ...changes,
});

export const aStepDone = (changes: Partial<StepDone> = {}): StepDone => ({
  id: 'done-1',
  batchId: 'batch-1',
  step: 'give-larvae',
  doneOn: '2026-05-20',
  note: null,
  ...changes,
});

export const aStepMove = (changes: Partial<StepMove> = {}): StepMove => ({
  id: 'move-1',
  batchId: 'batch-1',
  step: 'stock-boxes',
  movedTo: '2026-05-29',
  reason: 'rain',
  ...changes,
});

export const aStepDrop = (changes: Partial<StepDrop> = {}): StepDrop => ({
  id: 'drop-1',
  batchId: 'batch-1',
  step: 'check-own-cells',
  droppedOn: '2026-05-29',
  reason: 'not one was taken',
  ...changes,
});

export const anObservation = (changes: Partial<Observation> = {}): Observation => ({
  id: 'observation-1',
  batchId: 'batch-1',
  what: 'cells-sealed',
  seenOn: '2026-05-25',
  fromHours: null,
  toHours: null,
  note: null,
  ...changes,
});
