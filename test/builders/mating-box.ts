import type { BoxLook, HiveLook } from '../../shared/model/look.ts';
import type { MatingBox, Placement } from '../../shared/model/mating-box.ts';

export const aBox = (changes: Partial<MatingBox> = {}): MatingBox => ({
  id: 'box-1',
  code: 'K01',
  yardId: null,
  row: null,
  walkOrder: 0,
  boxType: 'mini',
  note: null,
  retiredOn: null,
  ...changes,
});

export const aPlacement = (changes: Partial<Placement> = {}): Placement => ({
  id: 'placement-1',
  boxId: 'box-1',
  batchId: 'batch-1',
  barId: null,
  placedOn: '2026-05-30',
  endedOn: null,
  endReason: null,
  ...changes,
});

export const aLook = (changes: Partial<BoxLook> = {}): BoxLook => ({
  id: 'look-1',
  boxId: 'box-1',
  placementId: 'placement-1',
  lookedOn: '2026-06-13',
  result: 'laying',
  strength: null,
  food: null,
  note: null,
  ...changes,
});

export const aHiveLook = (changes: Partial<HiveLook> = {}): HiveLook => ({
  id: 'hive-look-1',
  colonyId: 'colony-1',
  lookedOn: '2026-05-20',
  strength: null,
  food: null,
  note: 'strong, plenty of pollen',
  ...changes,
});
