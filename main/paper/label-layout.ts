import type { LabelFace, OmittedPart } from '../../shared/contract/print.ts';
import { type LabelSheet, labelInsets } from '../../shared/model/label-sheet.ts';
import {
  type Block,
  type HatchedStrip,
  type LabelPart,
  type LabelSizes,
  LEAST_POINTS,
  type PlacedText,
} from './label-blocks.ts';
import type { LabelRows } from './label-rows.ts';

/** All in millimetres from the label's upper left corner. */
export interface LabelLayout {
  readonly texts: readonly PlacedText[];
  readonly strip: HatchedStrip | null;
  readonly pencilLine: { readonly x: number; readonly y: number; readonly width: number } | null;
  /** The square code without its quiet zone, and the side of one module. */
  readonly qr: { readonly x: number; readonly y: number; readonly size: number; readonly module: number } | null;
  /** What this label is too small for. */
  readonly omitted: readonly OmittedPart[];
}

export interface LabelShows {
  readonly pencilLine: boolean;
  /** Modules on a side of the square code, or null without one. */
  readonly qrModules: number | null;
}

/** Empty modules around a square code (ISO/IEC 18004, quiet zone of 4). */
const QUIET_MODULES = 4;
/**
 * Side of a module in millimetres: the first that fits. 0.75 is read with ease from a hand's distance, below 0.5 no code
 * is printed (advice differs between makers of readers; both figures are whole dots at 203 dpi, 6 and 4).
 */
const MODULES = [0.75, 0.65, 0.55, 0.5] as const;
const LEAST_MODULE = 0.5;
const LEAST_GAP = 0.8;
const MOST_GAP = 2.2;
/** Room to write in pencil. */
const PENCIL_HEIGHT = 6;
const PENCIL_LINE_UP = 0.4;

/** Codes of twelve wide letters on the smallest labels: rather small than cut. */
const TINY_CODES = 6;

/**
 * Sizes in points, tried from the first. At 60 cm, a box on the ground seen from a stooping height, 16 pt is comfortable
 * and 11 pt the floor (22 and 16 minutes of arc, ISO 9241-3, capitals 0.7 of the size); 36 pt is read from 1.4 m.
 */
const LARGE = sizes([
  [72, 24, 24, 16, 2],
  [60, 20, 20, 14, 2],
  [48, 18, 18, 12, 2],
  [42, 16, 16, 12, 2],
  [38, 16, 16, 11, 2],
  [36, 16, 16, 11, 2],
]);
const READABLE = sizes([
  [36, 14, 14, 11, 2],
  [36, 12, 14, 11, 2],
  [36, 12, 12, 11, 2],
  [36, 11, 11, 11, 2],
]);
const SMALL = sizes([
  [32, 11, 11, 11, 2],
  [30, 10, 11, 10, 2],
  [28, 9, 11, 9, 2],
  [26, 9, 9, 9, 2],
]);
const SHORTENED = sizes([
  [36, 9, 11, 9, 1],
  [26, 9, 9, 9, 1],
]);
const LAST = sizes([
  [22, 9, 9, 9, 1],
  [14, 9, 9, 9, 1],
  [9, 9, 9, 9, 1, TINY_CODES],
]);

type Row = readonly [box: number, mother: number, handsOff: number, looks: number, motherLines: number, codes?: number];

function sizes(rows: readonly Row[]): readonly LabelSizes[] {
  return rows.map(([box, mother, handsOff, looks, motherLines, codes = LEAST_POINTS]) => ({
    box,
    mother,
    handsOff,
    looks,
    motherLines,
    codes,
  }));
}

interface Tier {
  readonly module: number;
  readonly sizes: readonly LabelSizes[];
}

/**
 * What is tried before what: large words with a good code, then readable words with any code, then small words. Parts
 * are left out before the box number gets small, since it is what a label is looked at for.
 */
const TIERS: readonly Tier[] = [
  { module: 0.65, sizes: LARGE },
  { module: LEAST_MODULE, sizes: READABLE },
  { module: LEAST_MODULE, sizes: SMALL },
  { module: LEAST_MODULE, sizes: SHORTENED },
];
const LAST_TIERS: readonly Tier[] = [...TIERS, { module: LEAST_MODULE, sizes: LAST }];

/** What a small label goes without, in this order. Box, batch and hands-off day are always there. */
const OMISSIONS: readonly (readonly OmittedPart[])[] = [
  [],
  ['brood'],
  ['brood', 'mother'],
  ['brood', 'mother', 'look'],
  ['brood', 'mother', 'look', 'colour'],
];

const OMITTED_SETS = new Map(OMISSIONS.map((parts) => [parts, new Set<LabelPart>(parts)]));

/** Where every word of a label goes: fitted, never cut. Null when a square code is asked for and has no room. */
export function layOutLabel(
  label: LabelFace,
  sheet: LabelSheet,
  shows: LabelShows,
  make: LabelRows,
): LabelLayout | null {
  const whole = firstThatFits(label, sheet, shows, OMISSIONS.slice(0, 1), make);
  if (whole) return whole;
  const withoutCode = { ...shows, qrModules: null };
  const plain =
    firstThatFits(label, sheet, withoutCode, OMISSIONS, make) ??
    firstThatFits(label, sheet, { ...withoutCode, pencilLine: false }, OMISSIONS, make);
  if (!plain) throw new Error(`nothing fits on a label of ${sheet.key}`);
  if (shows.qrModules === null) return plain;
  return firstThatFits(label, sheet, shows, [plain.omitted], make);
}

/** Side in millimetres that a code of so many modules needs with its quiet zone, at the least. */
export const leastQrSide = (modules: number): number => (modules + 2 * QUIET_MODULES) * LEAST_MODULE;

function firstThatFits(
  label: LabelFace,
  sheet: LabelSheet,
  shows: LabelShows,
  omissions: readonly (readonly OmittedPart[])[],
  make: LabelRows,
): LabelLayout | null {
  const tried = frames(sheet, shows);
  for (const omit of omissions)
    for (const tier of omit === OMISSIONS.at(-1) ? LAST_TIERS : TIERS)
      for (const frame of tried) {
        if (frame.qr && frame.qr.module < tier.module) continue;
        const layout = largestOf(tier, label, omit, frame, make);
        if (layout) return layout;
      }
  return null;
}

/** Where the smallest sizes of a tier do not fit, its larger ones are not tried. */
function largestOf(
  tier: Tier,
  label: LabelFace,
  omit: readonly OmittedPart[],
  frame: Frame,
  make: LabelRows,
): LabelLayout | null {
  const smallest = tier.sizes.at(-1);
  const fallback = smallest ? tryLayout(label, smallest, omit, frame, make) : null;
  if (!fallback) return null;
  for (const sizes of tier.sizes.slice(0, -1)) {
    const layout = tryLayout(label, sizes, omit, frame, make);
    if (layout) return layout;
  }
  return fallback;
}

interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly pencilLine: boolean;
  readonly qr: { readonly side: number; readonly module: number; readonly modules: number } | null;
  /** Whether the lower rows run on under the code, or all rows stay beside it. */
  readonly lowerRows: 'full-width' | 'beside-code';
}

function frames(sheet: LabelSheet, { pencilLine, qrModules }: LabelShows): readonly Frame[] {
  const inset = labelInsets(sheet);
  const inner = {
    x: inset.left,
    y: inset.top,
    width: sheet.labelWidth - inset.left - inset.right,
    height: sheet.labelHeight - inset.top - inset.bottom,
    pencilLine,
  };
  if (qrModules === null) return [{ ...inner, qr: null, lowerRows: 'full-width' }];
  return MODULES.flatMap((module) => {
    const qr = { module, modules: qrModules, side: (qrModules + 2 * QUIET_MODULES) * module };
    if (qr.side > inner.height || qr.side > inner.width * 0.6) return [];
    return (['beside-code', 'full-width'] as const).map((lowerRows) => ({ ...inner, qr, lowerRows }));
  });
}

function tryLayout(
  label: LabelFace,
  sizes: LabelSizes,
  omit: readonly OmittedPart[],
  frame: Frame,
  make: LabelRows,
): LabelLayout | null {
  const rows = rowsOf(label, sizes, OMITTED_SETS.get(omit) ?? new Set(omit), frame, make);
  if (!rows) return null;
  const gaps = rows.upper.length + rows.lower.length - 1 + (frame.pencilLine ? 1 : 0);
  const least = LEAST_GAP * gaps;
  const beside = frame.qr && frame.lowerRows === 'full-width' ? frame.qr.side - LEAST_GAP : 0;
  const upperHeight = Math.max(heightOf(rows.upper) + LEAST_GAP * (rows.upper.length - 1), beside);
  const used = upperHeight - LEAST_GAP * (rows.upper.length - 1) + heightOf(rows.lower) + least;
  const pencil = frame.pencilLine ? PENCIL_HEIGHT : 0;
  const spare = frame.height - used - pencil;
  if (spare < 0) return null;
  const gap = Math.min(MOST_GAP, LEAST_GAP + spare / Math.max(1, gaps));
  const upperEnd = frame.y + Math.max(heightOf(rows.upper) + gap * (rows.upper.length - 1), beside);
  const placed = [
    ...placeRows(rows.upper, frame.x, frame.y, gap),
    ...placeRows(rows.lower, frame.x, upperEnd + gap, gap),
  ];
  return {
    texts: placed.flatMap((block) => block.texts),
    strip: placed.find((block) => block.strip)?.strip ?? null,
    pencilLine: frame.pencilLine
      ? { x: frame.x, y: frame.y + frame.height - PENCIL_LINE_UP, width: lowerWidth(frame) }
      : null,
    qr: qrPlace(frame),
    omitted: omit,
  };
}

const heightOf = (rows: readonly Block[]): number => rows.reduce((sum, row) => sum + row.height, 0);
const upperWidth = (frame: Frame): number => frame.width - (frame.qr?.side ?? 0);
const lowerWidth = (frame: Frame): number => (frame.lowerRows === 'full-width' ? frame.width : upperWidth(frame));

function rowsOf(
  label: LabelFace,
  sizes: LabelSizes,
  omit: ReadonlySet<LabelPart>,
  frame: Frame,
  make: LabelRows,
): { readonly upper: readonly Block[]; readonly lower: readonly Block[] } | null {
  const box = make.box(label, sizes, omit, upperWidth(frame));
  if (!box || box.height > frame.height) return null;
  const strip = label.handsOffUntil === null ? [] : [make.strip(label, sizes, lowerWidth(frame))];
  if (strip.some((one) => one === null || box.height + one.height > frame.height)) return null;
  const mother = omit.has('mother') ? [] : [make.mother(label, sizes, upperWidth(frame))];
  const noLooks = omit.has('look') || (label.linesAsTheyAre && label.firstLookOn === '');
  const looks = noLooks ? [] : [make.looks(label, sizes, omit, lowerWidth(frame))];
  const upper = [box, ...mother].filter((block) => block !== null);
  const lower = [...strip, ...looks].filter((block) => block !== null);
  return upper.length + lower.length === 1 + strip.length + mother.length + looks.length ? { upper, lower } : null;
}

function placeRows(rows: readonly Block[], x: number, top: number, gap: number): readonly Block[] {
  let y = top;
  return rows.map((row) => {
    const at = y;
    y += row.height + gap;
    return {
      height: row.height,
      texts: row.texts.map((text) => ({ ...text, x: text.x + x, y: text.y + at })),
      strip: row.strip && {
        ...row.strip,
        x: row.strip.x + x,
        y: row.strip.y + at,
        clearFrom: row.strip.clearFrom + x,
        clearTo: row.strip.clearTo + x,
      },
    };
  });
}

/** The code at the right, its quiet zone inside the label's margin: at the top, or in the middle where it has the whole height. */
function qrPlace({ qr, x, y, width, height, lowerRows }: Frame): LabelLayout['qr'] {
  if (!qr) return null;
  const quiet = QUIET_MODULES * qr.module;
  const down = lowerRows === 'full-width' ? 0 : (height - qr.side) / 2;
  return {
    x: x + width - qr.side + quiet,
    y: y + down + quiet,
    size: qr.modules * qr.module,
    module: qr.module,
  };
}
