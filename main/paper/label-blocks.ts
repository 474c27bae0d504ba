import type { LabelFace, OmittedPart } from '../../shared/contract/print.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import { type FittedText, fitShortened, fitText, type Measure, type PaperFont, POINT } from './text-fit.ts';

export type LabelPart = 'box' | 'batch' | 'handsOff' | OmittedPart;

/** All in millimetres; `y` is the baseline. */
export interface PlacedText {
  readonly part: LabelPart;
  readonly text: string;
  readonly font: PaperFont;
  readonly points: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The frame round the hands-off words: hatched but for the span of the words. */
export interface HatchedStrip {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly clearFrom: number;
  readonly clearTo: number;
}

/** One row of a label, measured from its own upper left corner. */
export interface Block {
  readonly height: number;
  readonly texts: readonly PlacedText[];
  readonly strip: HatchedStrip | null;
}

/** Sizes in points that one try sets the label in. */
export interface LabelSizes {
  readonly box: number;
  readonly mother: number;
  readonly handsOff: number;
  readonly looks: number;
  readonly motherLines: number;
  /** The floor for the box and batch codes. */
  readonly codes: number;
}

/** Nothing on a label is smaller: the floor for print held in the hand (ISO 9241-3: 16 minutes of arc at 40 cm is 7.5 pt). */
export const LEAST_POINTS = 9;
const BODY_POINTS = 11;
/** Read with comfort at arm's length. */
const GOOD_POINTS = 16;
/** Capital letters, and a line with room for accents and tails, as shares of the size, for both fonts. */
const CAPITALS = 0.67;
const LINE = 1.12;
const BASELINE = 0.86;
/** Round letters reach a little above capitals; accents on capitals and tails below the line reach this far. */
const OVERSHOOT = 0.04;
const ACCENTED = 0.95;
const TAIL = 0.24;
const SHORT_TAIL = 0.09;
/** A box number beside the batch may be this much smaller than on a row of its own. */
const NEARLY = 0.95;
const GAP = 2;
/** Width of the hatching at each end of the strip. */
const LEAST_HATCH = 1.6;
const USUAL_HATCH = 3.5;
const STRIP_AIR = 1;
const STACK_GAP = 1.5;
/** Least room between the two looks: the width of three spaces. */
const LOOKS_GAP = 1.5;

const floorOf = (points: number): number => (points > BODY_POINTS ? BODY_POINTS : LEAST_POINTS);

type Omit = ReadonlySet<LabelPart>;

/** The box number as large as can be, and beside it, or under a long one, the batch and the year colour. */
export function boxBlock(
  label: LabelFace,
  sizes: LabelSizes,
  omit: Omit,
  width: number,
  measure: Measure,
): Block | null {
  const large = fitText(label.box, { font: 'bold', from: sizes.box, floor: sizes.codes, width, lines: 2 }, measure);
  if (!large) return null;
  for (const batchPoints of batchSizes(sizes)) {
    const besideWidth = measure(label.batch, 'bold', batchPoints);
    const wish = {
      font: 'bold',
      from: sizes.box,
      floor: large.points * NEARLY,
      width: width - besideWidth - GAP,
      lines: 1,
    } as const;
    const number = fitText(label.box, wish, measure);
    if (!number) continue;
    const block = numberBlock(number, measure);
    return {
      ...block,
      texts: [...block.texts, ...cornerTexts(label, batchPoints, omit, width, block.height, measure)],
    };
  }
  const under = batchUnder(label, sizes, omit, width, measure);
  return under && stack([numberBlock(large, measure), under]);
}

/** The batch gives way before the box number does. */
const batchSizes = ({ mother }: LabelSizes): readonly number[] => [
  Math.min(mother, 20),
  ...[14, 12, BODY_POINTS, LEAST_POINTS].filter((points) => points < mother),
];

function batchUnder(label: LabelFace, sizes: LabelSizes, omit: Omit, width: number, measure: Measure): Block | null {
  const wish = { font: 'bold', from: Math.min(sizes.mother, 20), floor: sizes.codes, width, lines: 2 } as const;
  const batch = fitText(label.batch, wish, measure);
  if (!batch) return null;
  const block = linesBlock('batch', batch.lines, 'bold', batch.points, measure);
  const last = block.texts.at(-1);
  if (!last || omit.has('colour')) return block;
  const points = Math.min(BODY_POINTS, batch.points);
  const colourWidth = measure(label.yearColour, 'regular', points);
  const x = last.width + GAP;
  if (x + colourWidth > width) return block;
  const colour = {
    part: 'colour',
    text: label.yearColour,
    font: 'regular',
    points,
    x,
    y: last.y,
    width: colourWidth,
  } as const;
  return { ...block, texts: [...block.texts, colour] };
}

function numberBlock({ points, lines }: FittedText, measure: Measure): Block {
  const above = lines.some(hasAccent) ? ACCENTED : CAPITALS + OVERSHOOT;
  const line = (above + (lines.some(hasTail) ? TAIL : SHORT_TAIL)) * points * POINT;
  return {
    height: line * lines.length,
    strip: null,
    texts: lines.map((text, index) => ({
      part: 'box',
      text,
      font: 'bold',
      points,
      x: 0,
      y: line * index + above * points * POINT,
      width: measure(text, 'bold', points),
    })),
  };
}

const hasAccent = (text: string): boolean => /\p{M}/u.test(text.normalize('NFD'));
const hasTail = (text: string): boolean => /[Qgjpqy,;()[\]{}|/]/u.test(text);

/** Batch in the upper right corner, year colour below it where the row is high enough. */
function cornerTexts(
  label: LabelFace,
  points: number,
  omit: Omit,
  width: number,
  height: number,
  measure: Measure,
): readonly PlacedText[] {
  const batchWidth = measure(label.batch, 'bold', points);
  const batch: PlacedText = {
    part: 'batch',
    text: label.batch,
    font: 'bold',
    points,
    x: width - batchWidth,
    y: points * (CAPITALS + 0.04) * POINT,
    width: batchWidth,
  };
  const colourPoints = Math.min(BODY_POINTS, points);
  const colourWidth = measure(label.yearColour, 'regular', colourPoints);
  const y = batch.y + colourPoints * LINE * POINT;
  if (omit.has('colour') || colourWidth > batchWidth + GAP || y > height) return [batch];
  return [
    batch,
    {
      part: 'colour',
      text: label.yearColour,
      font: 'regular',
      points: colourPoints,
      x: width - colourWidth,
      y,
      width: colourWidth,
    },
  ];
}

/** Only the last try cuts words of the mother's name to their first letters. */
export const shortensMother = ({ mother, motherLines }: LabelSizes): boolean =>
  motherLines === 1 && mother === LEAST_POINTS;

export function motherBlock(label: LabelFace, sizes: LabelSizes, width: number, measure: Measure): Block | null {
  const wish = {
    font: 'regular',
    from: sizes.mother,
    floor: floorOf(sizes.mother),
    width,
    lines: sizes.motherLines,
  } as const;
  const fitted = shortensMother(sizes)
    ? fitShortened(label.mother, wish, measure)
    : fitText(label.mother, wish, measure);
  return fitted && linesBlock('mother', fitted.lines, 'regular', fitted.points, measure);
}

/** Frame with hatched ends: seen as "hands off" before it is read. The words in one line, or stacked beside the day. */
export function stripBlock(label: LabelFace, sizes: LabelSizes, width: number, measure: Measure): Block | null {
  const labelWords = wordsOf(label.language).labels;
  const room = width - 2 * LEAST_HATCH - 2 * STRIP_AIR;
  const whole = labelWords.handsOff(label.handsOffUntil ?? '');
  const wish = {
    font: 'bold',
    from: sizes.handsOff,
    floor: Math.min(sizes.handsOff, GOOD_POINTS),
    width: room,
    lines: 1,
  } as const;
  const line = fitText(whole, wish, measure);
  if (line) return framed(linesBlock('handsOff', line.lines, 'bold', line.points, measure), width);
  return stackedStrip(label, sizes, room, width, measure) ?? shrunkStrip(whole, sizes, room, width, measure);
}

function stackedStrip(
  label: LabelFace,
  sizes: LabelSizes,
  room: number,
  width: number,
  measure: Measure,
): Block | null {
  const labelWords = wordsOf(label.language).labels;
  const side = Math.max(LEAST_POINTS, Math.min(BODY_POINTS, sizes.handsOff * 0.7));
  const words = labelWords.handsOffStacked.map((word) => ({ word, width: measure(word, 'bold', side) }));
  const wordsWidth = Math.max(...words.map((one) => one.width));
  const day = labelWords.handsOffDay(label.handsOffUntil ?? '');
  const wish = { font: 'bold', from: sizes.handsOff, floor: floorOf(sizes.handsOff), lines: 1 } as const;
  const fitted = fitText(day, { ...wish, width: room - wordsWidth - STACK_GAP }, measure);
  if (!fitted) return null;
  const left = linesBlock('handsOff', labelWords.handsOffStacked, 'bold', side, measure, 1);
  const right: PlacedText = {
    part: 'handsOff',
    text: day,
    font: 'bold',
    points: fitted.points,
    x: wordsWidth + STACK_GAP,
    y: (left.height + fitted.points * CAPITALS * POINT) / 2,
    width: measure(day, 'bold', fitted.points),
  };
  return framed({ ...left, texts: [...left.texts, right] }, width);
}

function shrunkStrip(whole: string, sizes: LabelSizes, room: number, width: number, measure: Measure): Block | null {
  const wish = { font: 'bold', from: sizes.handsOff, floor: LEAST_POINTS, width: room, lines: 2 } as const;
  const fitted = fitText(whole, wish, measure);
  return fitted && framed(linesBlock('handsOff', fitted.lines, 'bold', fitted.points, measure), width);
}

function framed(inner: Block, width: number): Block {
  const air = 0.6;
  const words = Math.max(...inner.texts.map((text) => text.x + text.width));
  const height = inner.height + 2 * air;
  const hatch = Math.max(LEAST_HATCH, Math.min(USUAL_HATCH, (width - words - 2 * STRIP_AIR) / 2));
  const left = hatch + STRIP_AIR;
  return {
    height,
    texts: inner.texts.map((text) => ({ ...text, x: text.x + left, y: text.y + air })),
    strip: { x: 0, y: 0, width, height, clearFrom: hatch, clearTo: left + words + STRIP_AIR },
  };
}

/** First look at the left, sealed-brood look at the right, or below it where there is no room. */
export function looksBlock(
  label: LabelFace,
  sizes: LabelSizes,
  omit: Omit,
  width: number,
  measure: Measure,
): Block | null {
  const labelWords = wordsOf(label.language).labels;
  const { firstLookOn, sealedBroodLookOn, linesAsTheyAre = false } = label;
  const look = linesAsTheyAre ? firstLookOn : labelWords.look(firstLookOn);
  const lower = linesAsTheyAre ? sealedBroodLookOn : labelWords.brood(sealedBroodLookOn);
  const brood = omit.has('brood') || lower === '' ? null : lower;
  const widthAt1 = (text: string) => measure(text, 'regular', 1);
  const oneLine = brood === null ? width / widthAt1(look) : (width - LOOKS_GAP) / (widthAt1(look) + widthAt1(brood));
  const points = Math.min(sizes.looks, Math.floor(oneLine * 4) / 4);
  if (points >= Math.min(sizes.looks, BODY_POINTS - 1)) {
    const first = linesBlock('look', [look], 'regular', points, measure);
    if (brood === null) return first;
    const [second] = linesBlock('brood', [brood], 'regular', points, measure).texts;
    return second ? { ...first, texts: [...first.texts, { ...second, x: width - second.width }] } : first;
  }
  const below = [look, ...(brood === null ? [] : [brood])].map((text) =>
    fitText(text, { font: 'regular', from: sizes.looks, floor: LEAST_POINTS, width, lines: 1 }, measure),
  );
  if (below.some((one) => one === null)) return null;
  return stack(
    below.flatMap((one, index) =>
      one ? [linesBlock(index === 0 ? 'look' : 'brood', one.lines, 'regular', one.points, measure)] : [],
    ),
  );
}

function linesBlock(
  part: LabelPart,
  lines: readonly string[],
  font: PaperFont,
  points: number,
  measure: Measure,
  leading = LINE,
): Block {
  const line = points * leading * POINT;
  const texts = lines.map((text, index) => ({
    part,
    text,
    font,
    points,
    x: 0,
    y: line * index + points * (BASELINE - (LINE - leading) / 2) * POINT,
    width: measure(text, font, points),
  }));
  return { height: line * lines.length, texts, strip: null };
}

function stack(blocks: readonly Block[]): Block {
  let height = 0;
  const texts: PlacedText[] = [];
  for (const block of blocks) {
    texts.push(...block.texts.map((text) => ({ ...text, y: text.y + height })));
    height += block.height;
  }
  return { height, texts, strip: null };
}
