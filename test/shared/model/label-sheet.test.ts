import { describe, expect, test } from 'vitest';
import {
  LABEL_SHEETS,
  type LabelSheet,
  labelPlace,
  labelSheet,
  labelsOnSheet,
} from '../../../shared/model/label-sheet.ts';

const sheets: readonly LabelSheet[] = LABEL_SHEETS;

describe.each(sheets.map((sheet) => [sheet.key, sheet] as const))('%s', (key, sheet) => {
  test('says its own measures and ends where it begins, seen from the other side of the paper', () => {
    const last = labelPlace(sheet, labelsOnSheet(sheet) - 1);
    expect(sheet.paperWidth - (last.x + sheet.labelWidth)).toBeCloseTo(sheet.left, 2);
    expect(sheet.paperHeight - (last.y + sheet.labelHeight)).toBeCloseTo(sheet.top, 2);
    const [, columns, rows, width, height] = /(\d+)x(\d+)-([\d.]+)x([\d.]+)$/.exec(key) ?? [];
    if (!columns) return expect(key).toMatch(/^roll-/);
    expect([sheet.columns, sheet.rows]).toEqual([Number(columns), Number(rows)]);
    expect([sheet.labelWidth, sheet.labelHeight].map((side) => side.toFixed(1))).toEqual([
      Number(width).toFixed(1),
      Number(height).toFixed(1),
    ]);
  });

  test('has labels that neither overlap nor leave the paper', () => {
    expect(sheet.pitchX).toBeGreaterThanOrEqual(sheet.labelWidth);
    expect(sheet.pitchY).toBeGreaterThanOrEqual(sheet.labelHeight);
    expect(Math.min(sheet.left, sheet.top)).toBeGreaterThanOrEqual(0);
  });
});

// Left and top as published for sheets of 21 labels (printreadykit.pages.dev, address labels).
test('the sheet of 21 begins 7.25 mm from the left and 15.15 mm from the top', () => {
  expect(labelSheet('a4-3x7-63.5x38.1')).toMatchObject({ left: 7.25, top: 15.15, pitchX: 66, pitchY: 38.1 });
});

test('labels are counted row by row, and go on to the next sheet', () => {
  const sheet = labelSheet('a4-3x7-63.5x38.1');
  expect(labelPlace(sheet, 3)).toEqual({ page: 0, x: 7.25, y: 15.15 + 38.1 });
  expect(labelPlace(sheet, 21)).toEqual({ page: 1, x: 7.25, y: 15.15 });
});
