import { expect, test } from 'vitest';
import { labelPicture } from '../../../main/paper/label-pdf.ts';
import { LABEL_SHEETS, type LabelSheet } from '../../../shared/model/label-sheet.ts';
import { LEAST_ROOM, sheetTrouble } from '../../../shared/model/own-label-sheet.ts';
import { aLabel } from '../../builders/label-text.ts';
import { anOwnSheet } from '../../builders/own-sheet.ts';

test.each([...LABEL_SHEETS] as LabelSheet[])('every sheet of the list passes: $key', (sheet) => {
  expect(sheetTrouble(sheet)).toBeNull();
});

test.each([
  // At the very edge of the paper words keep 5 mm, else 2 mm, from the label's sides.
  { edge: 0, inset: 5 },
  { edge: 6, inset: 2 },
])(
  'the smallest label allowed, $edge mm from the edge of the paper, holds the widest codes (twelve letters W)',
  ({ edge, inset }) => {
    const [labelWidth, labelHeight] = [LEAST_ROOM.width + 2 * inset, LEAST_ROOM.height + 2 * inset];
    const small = { labelWidth, labelHeight, pitchX: labelWidth, pitchY: labelHeight };
    const sheet = anOwnSheet({ ...small, left: edge, top: edge });
    expect(sheetTrouble(sheet)).toBeNull();
    expect(sheetTrouble({ ...sheet, labelWidth: labelWidth - 0.5 })).toMatchObject({ trouble: 'too-small' });
    const label = aLabel({ box: 'WWWWWWWWWWWW', batch: 'WWWWWWWWWWWW' });
    const picture = labelPicture(label, sheet, { qr: false, pencilLine: true });
    expect(picture?.texts.map(({ text }) => text).join('')).toContain('WWWWWW');
  },
);
