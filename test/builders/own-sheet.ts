import type { OwnLabelSheet } from '../../shared/model/own-label-sheet.ts';

/** A sheet that is on no list: 2 x 5 labels of 90 x 50 mm on A4. */
export const anOwnSheet = (changes: Partial<OwnLabelSheet> = {}): OwnLabelSheet => ({
  key: 'own-cards',
  name: 'Cards from the drawer',
  paperWidth: 210,
  paperHeight: 297,
  columns: 2,
  rows: 5,
  labelWidth: 90,
  labelHeight: 50,
  left: 12,
  top: 20,
  pitchX: 96,
  pitchY: 52,
  ...changes,
});

/** Read off a page that printed 0.4 mm too far right, 1 mm too far down, and 0.2 % short across. */
export const readings = { crossFromLeft: 20.36, crossFromTop: 21, barAcross: 99.8, barDown: 100 } as const;
