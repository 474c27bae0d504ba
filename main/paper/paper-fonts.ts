import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Measure, type PaperFont, POINT } from './text-fit.ts';

/** A stretch of text that one font file can draw. */
export interface Run {
  readonly face: string;
  readonly text: string;
}

export interface PaperFonts {
  readonly measure: Measure;
  runs(text: string, font: PaperFont): readonly Run[];
}

const require = createRequire(import.meta.url);

/**
 * First the plain face of the window; letters it lacks (Greek, Cyrillic, some of Esperanto and Welsh) come from the second,
 * so that no name is printed as boxes. A file is read only when a letter needs it.
 */
const FACES: Readonly<Record<PaperFont, readonly [string, string]>> = {
  regular: [
    '@expo-google-fonts/atkinson-hyperlegible-next/500Medium/AtkinsonHyperlegibleNext_500Medium.ttf',
    '@expo-google-fonts/source-serif-4/500Medium/SourceSerif4_500Medium.ttf',
  ],
  bold: [
    '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf',
    '@expo-google-fonts/source-serif-4/700Bold/SourceSerif4_700Bold.ttf',
  ],
};
/** What stands for a letter that neither file has. */
const NO_LETTER = '?';

const fileBytes = new Map<string, Buffer>();
function bytesOf(file: string): Buffer {
  const known = fileBytes.get(file);
  if (known) return known;
  const bytes = readFileSync(require.resolve(file));
  fileBytes.set(file, bytes);
  return bytes;
}

/** Makes the fonts known to a document and measures by them. */
export function openFonts(document: PDFKit.PDFDocument): PaperFonts {
  const knows = letterTest(document);
  const runsOf = new Map<string, readonly Run[]>();
  const widths = new Map<string, number>();
  const runs = (text: string, font: PaperFont): readonly Run[] => {
    const key = `${font} ${text}`;
    const known = runsOf.get(key);
    if (known) return known;
    const made = splitRuns(printable(text), FACES[font], knows);
    runsOf.set(key, made);
    return made;
  };
  const widthAtOnePoint = (text: string, font: PaperFont): number => {
    const key = `${font} ${text}`;
    const known = widths.get(key);
    if (known !== undefined) return known;
    const width = runs(text, font).reduce((sum, run) => {
      document.font(run.face).fontSize(1);
      return sum + document.widthOfString(run.text) * POINT;
    }, 0);
    widths.set(key, width);
    return width;
  };
  return { runs, measure: (text, font, points) => widthAtOnePoint(text, font) * points };
}

/** One line of plain text: composed letters, no control or direction marks, single spaces. */
export const printable = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\s+/g, ' ');

function splitRuns(
  text: string,
  faces: readonly [string, string],
  knows: (file: string, letter: string) => boolean,
): readonly Run[] {
  const runs: { face: string; text: string }[] = [];
  for (const letter of text) {
    const bare = letter.normalize('NFD').charAt(0);
    const [drawn, face] =
      [letter, bare].flatMap((form) =>
        faces.filter((file) => knows(file, form)).map((file) => [form, file] as const),
      )[0] ?? ([NO_LETTER, faces[0]] as const);
    const last = runs.at(-1);
    if (last?.face === face) last.text += drawn;
    else runs.push({ face, text: drawn });
  }
  return runs;
}

interface LetterSet {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** Registers a file with the document when first asked about, and says whether it has a letter. */
function letterTest(document: PDFKit.PDFDocument): (file: string, letter: string) => boolean {
  const sets = new Map<string, LetterSet>();
  const setOf = (file: string): LetterSet => {
    const known = sets.get(file);
    if (known) return known;
    document.registerFont(file, bytesOf(file)).font(file);
    const set = letterSetOrThrow(document);
    sets.set(file, set);
    return set;
  };
  return (file, letter) => setOf(file).hasGlyphForCodePoint(letter.codePointAt(0) ?? 0);
}

/** The letters of the font now in use; the writer has no public way to ask. A test holds this to the pinned version. */
function letterSetOrThrow(document: PDFKit.PDFDocument): LetterSet {
  const { _font: font } = document as unknown as { readonly _font?: { readonly font?: Partial<LetterSet> } };
  if (typeof font?.font?.hasGlyphForCodePoint !== 'function') throw new Error('the PDF writer hides its fonts');
  return font.font as LetterSet;
}
