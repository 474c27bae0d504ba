/** Width of a text in millimetres at a size in points, by the real font. */
export type Measure = (text: string, font: PaperFont, points: number) => number;

/** The two weights paper is set in. */
export type PaperFont = 'regular' | 'bold';

export const POINT = 25.4 / 72;

export interface FittedText {
  readonly points: number;
  readonly lines: readonly string[];
}

export interface FitWish {
  readonly font: PaperFont;
  /** Largest and smallest size in points. */
  readonly from: number;
  readonly floor: number;
  /** Room in millimetres. */
  readonly width: number;
  readonly lines: number;
}

const SIZE_STEP = 0.5;

/** The whole text at the largest size that fits: shrunk first, then broken into lines. Null when it does not fit at all. */
export function fitText(text: string, wish: FitWish, measure: Measure): FittedText | null {
  const alone = sizeFor(measure(text, wish.font, 1), wish);
  if (alone >= wish.floor) return { points: alone, lines: [text] };
  for (let count = 2; count <= wish.lines; count += 1) {
    const lines = breakEvenly(text, count, wish.font, measure);
    const widest = Math.max(...lines.map((line) => measure(line, wish.font, 1)));
    const points = sizeFor(widest, wish);
    if (points >= wish.floor) return { points, lines };
  }
  return null;
}

const sizeFor = (widthAtOnePoint: number, { from, width }: FitWish): number =>
  Math.min(from, Math.floor(width / widthAtOnePoint / SIZE_STEP) * SIZE_STEP);

/** As `fitText`; what does not fit in full is shortened word by word, and the last word of all by an ellipsis. */
export function fitShortened(text: string, wish: FitWish, measure: Measure): FittedText {
  for (const shorter of shorterForms(text)) {
    const fitted = fitText(shorter, wish, measure);
    if (fitted) return fitted;
  }
  return { points: wish.floor, lines: ['…'] };
}

/** As `fitText`; what does not fit in full is cut at its end, as a note is whose first words say most. */
export function fitCut(text: string, wish: FitWish, measure: Measure): FittedText {
  const whole = fitText(text, wish, measure);
  if (whole) return whole;
  for (const shorter of cutForms(text)) {
    const fitted = fitText(shorter, wish, measure);
    if (fitted) return fitted;
  }
  return { points: wish.floor, lines: ['…'] };
}

/** The text itself, then inner words cut to their first letter, the longest first, then fewer and fewer letters. */
function* shorterForms(text: string): Generator<string> {
  yield text;
  const words = text.split(' ');
  const inner = words
    .map((word, index) => ({ index, length: [...word].length }))
    .slice(1, -1)
    .filter(({ length }) => length > 3)
    .toSorted((a, b) => b.length - a.length);
  for (const { index } of inner) {
    words[index] = `${[...(words[index] ?? '')][0]}.`;
    yield words.join(' ');
  }
  yield* cutForms(words.join(' '));
}

function* cutForms(text: string): Generator<string> {
  const letters = [...text];
  for (let kept = letters.length - 1; kept > 0; kept -= 1) yield `${letters.slice(0, kept).join('').trimEnd()}…`;
}

/** Breaks at spaces so that the widest line is as narrow as can be; a text without spaces is broken between letters. */
function breakEvenly(text: string, count: number, font: PaperFont, measure: Measure): readonly string[] {
  if (count === 1) return [text];
  const breaks = [...text.matchAll(/ /g)].map((match) => match.index);
  const places =
    breaks.length >= count - 1 ? breaks : [...text].map((_, index) => [...text].slice(0, index).join('').length);
  const options = places
    .filter((at) => at > 0)
    .map((at) => {
      const rest = breakEvenly(text.slice(at).trim(), count - 1, font, measure);
      const lines = [text.slice(0, at).trim(), ...rest];
      return { lines, widest: Math.max(...lines.map((line) => measure(line, font, 1))) };
    });
  return options.toSorted((a, b) => a.widest - b.widest)[0]?.lines ?? [text];
}

/** Words laid one after another, a new line where the room ends; a word wider than the room is broken between letters. */
export function wrapText(
  text: string,
  font: PaperFont,
  points: number,
  width: number,
  measure: Measure,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').flatMap((whole) => brokenWord(whole, font, points, width, measure))) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && measure(longer, font, points) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function brokenWord(word: string, font: PaperFont, points: number, width: number, measure: Measure): readonly string[] {
  if (measure(word, font, points) <= width) return [word];
  const pieces: string[] = [];
  for (const letter of word) {
    const longer = `${pieces.at(-1) ?? ''}${letter}`;
    if (pieces.length > 0 && measure(longer, font, points) <= width) pieces[pieces.length - 1] = longer;
    else pieces.push(letter);
  }
  return pieces;
}
