import type { LabelText } from '../../shared/contract/print.ts';
import type { LabelSheet } from '../../shared/model/label-sheet.ts';
import { labelWords } from '../../shared/text/english/labels.ts';

/** Fonts of the label; widths are measured by the real font. */
export type LabelFont = 'regular' | 'bold';

/** Width of a text in millimetres at a size in points. */
export type Measure = (text: string, font: LabelFont, points: number) => number;

/** All in millimetres from the label's upper left corner; `y` is the baseline. */
export interface PlacedText {
  readonly text: string;
  readonly font: LabelFont;
  readonly points: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface LabelLayout {
  readonly texts: readonly PlacedText[];
  /** The strip behind the hands-off words. */
  readonly strip: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    /** Width of the words, which stand on white. */
    readonly clear: number;
  };
  readonly pencilLine: { readonly x: number; readonly y: number; readonly width: number } | null;
  readonly qr: { readonly x: number; readonly y: number; readonly size: number } | null;
}

export interface LabelShows {
  readonly pencilLine: boolean;
  /** Modules on a side of the square code, or null without one. */
  readonly qrModules: number | null;
}

/** Nothing may come nearer to the label's edge: sheets are cut and fed with that much play. */
const MARGIN = 2;
const POINT = 25.4 / 72;
const GAP = 1.2;
/** Empty modules around a square code (ISO/IEC 18004, quiet zone of 4). */
const QUIET_MODULES = 4;
/** Side of a module that a phone still reads from a hand's distance; below it no code is printed. */
export const LEAST_MODULE = 0.5;
const USUAL_MODULE = 0.6;
/** Sizes in points, largest first that fits is taken. Readable at arm's length: 16 pt and more (ISO 9241-3, 22 minutes of arc). */
const SIZES = { box: [44, 12], batch: [16, 9], mother: [16, 9], handsOff: [16, 9], looks: [12, 8] } as const;
/** Height of capital letters as a share of the size, for fonts of this kind. */
const CAPITALS = 0.7;

/** Where every word of a label goes. Texts shrink until they fit; none is cut. */
export function layOutLabel(label: LabelText, sheet: LabelSheet, shows: LabelShows, measure: Measure): LabelLayout {
  const inner = { x: MARGIN, y: MARGIN, width: sheet.labelWidth - 2 * MARGIN, height: sheet.labelHeight - 2 * MARGIN };
  const qrSize = shows.qrModules === null ? 0 : qrSide(shows.qrModules);
  const textWidth = inner.width - (qrSize > 0 ? qrSize + GAP : 0);
  const fitted = fitter(measure);
  const lineHeight = inner.height / (shows.pencilLine ? 5.4 : 4.6);
  const batchWidth = inner.width * 0.4;
  const box = fitted(label.box, 'bold', SIZES.box, inner.width - batchWidth - GAP, lineHeight * 2 * 0.82);
  const batch = fitted(label.batch, 'bold', SIZES.batch, batchWidth, lineHeight);
  const colour = fitted(label.yearColour, 'regular', SIZES.looks, batchWidth, lineHeight);
  const mother = fitted(label.mother, 'regular', SIZES.mother, textWidth, lineHeight);
  const handsOff = fitted(
    labelWords.handsOff(label.handsOffUntil),
    'bold',
    SIZES.handsOff,
    textWidth - 2 * GAP,
    lineHeight,
  );
  const looks = fitted(
    labelWords.looks(label.firstLookOn, label.sealedBroodLookOn),
    'regular',
    SIZES.looks,
    textWidth,
    lineHeight,
  );
  const row = (n: number) => inner.y + lineHeight * n;
  const baseline = (top: number, points: number) => top + (lineHeight + points * POINT * CAPITALS) / 2;
  const right = inner.x + inner.width;
  return {
    texts: [
      { ...box, x: inner.x, y: inner.y + box.points * POINT * CAPITALS },
      { ...batch, x: right - batch.width, y: inner.y + batch.points * POINT * CAPITALS },
      { ...colour, x: right - colour.width, y: baseline(row(0.85), colour.points) },
      { ...mother, x: inner.x, y: baseline(row(1.75), mother.points) },
      { ...handsOff, x: inner.x + GAP, y: baseline(row(2.72), handsOff.points) },
      { ...looks, x: inner.x, y: baseline(row(3.62), looks.points) },
    ],
    strip: { x: inner.x, y: row(2.72), width: textWidth, height: lineHeight, clear: handsOff.width + 2 * GAP },
    pencilLine: shows.pencilLine ? { x: inner.x, y: inner.y + inner.height - 0.4, width: textWidth } : null,
    qr: shows.qrModules === null ? null : { x: right - qrSize, y: inner.y + inner.height - qrSize, size: qrSize },
  };
}

/** Side of the square code with its quiet zone. */
const qrSide = (modules: number): number => (modules + 2 * QUIET_MODULES) * USUAL_MODULE;

/** The code itself, inside its quiet zone. */
export function qrCore(qr: NonNullable<LabelLayout['qr']>, modules: number) {
  const module = qr.size / (modules + 2 * QUIET_MODULES);
  return { x: qr.x + QUIET_MODULES * module, y: qr.y + QUIET_MODULES * module, size: modules * module, module };
}

/** Least side of a label on which a code of so many modules can be read, or null when this label is large enough. */
export function missingRoomForQr(sheet: LabelSheet, modules: number): number | null {
  const needed = (modules + 2 * QUIET_MODULES) * LEAST_MODULE;
  const room = Math.min(sheet.labelHeight - 2 * MARGIN, (sheet.labelWidth - 2 * MARGIN) * 0.4);
  return needed <= room && qrSide(modules) <= room ? null : needed;
}

function fitter(measure: Measure) {
  return (
    text: string,
    font: LabelFont,
    [largest, smallest]: readonly [number, number],
    width: number,
    height: number,
  ) => {
    const byHeight = height / (POINT * 1.05);
    const start = Math.min(largest, byHeight);
    const natural = measure(text, font, start);
    const points = natural <= width ? start : Math.max(smallest * 0.6, (start * width) / natural);
    return { text, font, points, width: measure(text, font, points) };
  };
}
