import type { LabelText } from '../../shared/contract/print.ts';

export const aLabel = (changes: Partial<LabelText> = {}): LabelText => ({
  placementId: 'placement-1',
  language: 'en',
  box: 'K07',
  batch: '26-07',
  mother: 'mother H03 Anna',
  yearColour: 'white',
  handsOffUntil: 'Mon 25 May',
  firstLookOn: 'Tue 26 May',
  sealedBroodLookOn: 'Thu 4 Jun',
  ...changes,
});
