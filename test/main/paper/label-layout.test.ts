import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LabelLayout, layOutLabel } from '../../../main/paper/label-layout.ts';
import { labelRows } from '../../../main/paper/label-rows.ts';
import { openPaper } from '../../../main/paper/paper-document.ts';
import { LABEL_SHEETS, type LabelSheetKey, labelInsets, labelSheet } from '../../../shared/model/label-sheet.ts';
import { aLabel } from '../../builders/label-text.ts';

const rows = labelRows(openPaper({ title: 'test', language: 'en', madeAt: '2026-05-14T12:00:00Z' }).measure);
const plain = { pencilLine: false, qrModules: null };

function layOut(sheet: LabelSheetKey, changes = {}, shows: Parameters<typeof layOutLabel>[2] = plain): LabelLayout {
  const layout = layOutLabel(aLabel(changes), labelSheet(sheet), shows, rows);
  if (!layout) throw new Error('does not fit');
  return layout;
}
const pointsOf = (layout: LabelLayout, part: string): number =>
  Math.max(0, ...layout.texts.filter((text) => text.part === part).map(({ points }) => points));

describe('sizes on the usual mating-box label, 63.5 x 38.1 mm', () => {
  // 36, 16 and 11 pt: capitals of 0.7 em at 60 cm and 1.4 m under 16 to 22 minutes of arc, ISO 9241-3.
  test('box number 36 pt and more, mother and hands-off day 16 pt, the rest 11 pt', () => {
    const layout = layOut('a4-3x7-63.5x38.1');
    expect(pointsOf(layout, 'box')).toBeGreaterThanOrEqual(36);
    expect(pointsOf(layout, 'mother')).toBeGreaterThanOrEqual(16);
    expect(pointsOf(layout, 'handsOff')).toBeGreaterThanOrEqual(16);
    expect(pointsOf(layout, 'look')).toBeGreaterThanOrEqual(11);
    expect(pointsOf(layout, 'brood')).toBeGreaterThanOrEqual(11);
    expect(layout.omitted).toEqual([]);
  });

  test('with a line for the pencil the number keeps its size and 6 mm are free above the line', () => {
    const layout = layOut('a4-3x7-63.5x38.1', {}, { pencilLine: true, qrModules: null });
    expect(pointsOf(layout, 'box')).toBeGreaterThanOrEqual(36);
    const lowest = Math.max(...layout.texts.map(({ y }) => y));
    expect((layout.pencilLine?.y ?? 0) - lowest).toBeGreaterThanOrEqual(5.6);
  });

  test('a long mother name is set in two lines with every word whole', () => {
    const mother = 'mother B7 Maximiliane Oberhuber-Zwettler of the hill';
    const lines = layOut('a4-3x7-63.5x38.1', { mother }).texts.filter(({ part }) => part === 'mother');
    expect(lines.map(({ text }) => text).join(' ')).toBe(mother);
    expect(lines).toHaveLength(2);
  });

  test('a capital with an accent stays below the label edge', () => {
    const [number] = layOut('a4-3x7-63.5x38.1', { box: 'Ž9' }).texts;
    // The caron of this font ends 0.93 em above the baseline (read from its outline).
    expect((number?.y ?? 0) - 0.93 * (number?.points ?? 0) * (25.4 / 72)).toBeGreaterThanOrEqual(1.9);
  });
});

test('a small label goes without mother and looks and keeps box, batch and hands-off day', () => {
  const layout = layOut('a4-5x13-38.1x21.2');
  expect(layout.omitted).toEqual(['brood', 'mother', 'look']);
  expect(pointsOf(layout, 'box')).toBeGreaterThanOrEqual(26);
  expect(new Set(layout.texts.map(({ part }) => part))).toEqual(new Set(['box', 'batch', 'colour', 'handsOff']));
});

describe('whatever a person types', () => {
  const typed = (longest: number) =>
    fc.string({ minLength: 1, maxLength: longest, unit: 'grapheme-composite' }).filter((text) => text.trim() !== '');
  const words = fc.record({ box: typed(12), batch: typed(12), mother: typed(80) });

  test.each(LABEL_SHEETS.map(({ key }) => key))(
    'on %s everything is inside, nothing overlaps, no words are under 9 pt',
    (key) => {
      const sheet = labelSheet(key);
      const inset = labelInsets(sheet);
      fc.assert(
        fc.property(words, fc.boolean(), (changes, pencilLine) => {
          const layout = layOut(key, changes, { pencilLine, qrModules: null });
          for (const { x, y, width, points, part } of layout.texts) {
            // A code of twelve wide letters may be smaller than words on the smallest labels: never cut.
            expect(points, part).toBeGreaterThanOrEqual(part === 'box' || part === 'batch' ? 6 : 9);
            expect(x, part).toBeGreaterThanOrEqual(inset.left - 0.001);
            expect(x + width, part).toBeLessThanOrEqual(sheet.labelWidth - inset.right + 0.001);
            expect(y - points * 0.67 * (25.4 / 72), part).toBeGreaterThanOrEqual(inset.top - 0.001);
            expect(y, part).toBeLessThanOrEqual(sheet.labelHeight - inset.bottom + 0.001);
          }
          expect(joined(layout, 'box')).toBe(spaceless(changes.box));
          expect(joined(layout, 'batch')).toBe(spaceless(changes.batch));
          expect(overlaps(layout)).toEqual([]);
        }),
        { numRuns: 25, seed: 26 },
      );
    },
  );
});

const spaceless = (text: string): string => text.replace(/\s/g, '');
const joined = ({ texts }: LabelLayout, part: string): string =>
  spaceless(texts.flatMap((one) => (one.part === part ? [one.text] : [])).join(''));

/** Pairs of texts whose capitals share ground. */
function overlaps({ texts }: LabelLayout): readonly string[] {
  const areas = texts.map(({ text, x, y, width, points }) => ({
    text,
    x,
    y,
    width,
    top: y - points * 0.67 * (25.4 / 72),
  }));
  return areas.flatMap((a, index) =>
    areas
      .slice(index + 1)
      .filter(
        (b) => a.x < b.x + b.width - 0.01 && b.x < a.x + a.width - 0.01 && a.top < b.y - 0.01 && b.top < a.y - 0.01,
      )
      .map((b) => `${a.text} / ${b.text}`),
  );
}

/** One line a text: millimetres and points, to see in a review what a change moves. */
const asLines = ({ texts, strip, qr }: LabelLayout): string =>
  [
    ...texts.map(
      ({ part, text, x, y, points }) => `${part.padEnd(8)} ${x.toFixed(2)} ${y.toFixed(2)} ${points} pt  ${text}`,
    ),
    strip
      ? `strip    ${strip.x.toFixed(2)} ${strip.y.toFixed(2)} ${strip.width.toFixed(2)} x ${strip.height.toFixed(2)}`
      : '',
    qr ? `code     ${qr.x.toFixed(2)} ${qr.y.toFixed(2)} module ${qr.module}` : '',
  ].join('\n');

test.each([
  ['a4-3x7-63.5x38.1', plain],
  ['a4-2x7-99.1x38.1', { pencilLine: false, qrModules: 21 }],
  ['roll-62', { pencilLine: true, qrModules: null }],
] as const)('the usual label on %s is laid out as kept', async (key, shows) => {
  await expect(asLines(layOut(key, {}, shows))).toMatchFileSnapshot(`../../golden/label-${key}.txt`);
});
