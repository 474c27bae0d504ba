import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Measure, type PaperFont, POINT } from './text-fit.ts';
import { type WriterFont, writerFontOrThrow } from './writer-font.ts';

/** A stretch of text that one font file can draw. */
export interface Run {
  readonly face: string;
  readonly text: string;
}

export interface MeasuredRun extends Run {
  /** Millimetres at one point. */
  readonly width: number;
  readonly writer: WriterFont;
  /** As the page is to show it, reckoned once; null where the writer itself must place its letters. */
  encoded(): string | null;
}

export interface PaperFonts {
  readonly measure: Measure;
  runs(text: string, font: PaperFont): readonly MeasuredRun[];
  /** The letters of a text that neither font has, not even without their accents; each once. */
  lacks(text: string): readonly string[];
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
/** For a paper that is read at length, as a book is. */
const SERIF_FACES: typeof FACES = {
  regular: [FACES.regular[1], FACES.regular[0]],
  bold: [FACES.bold[1], FACES.bold[0]],
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

/** Makes the fonts known to a document and measures by them; `serif` puts the second face first. */
export function openFonts(document: PDFKit.PDFDocument, serif = false): PaperFonts {
  const facesOf = (font: PaperFont) => (serif ? SERIF_FACES : FACES)[font];
  const knows = letterTest(document);
  const measuredRun = (run: Run): MeasuredRun => {
    document.font(run.face).fontSize(1);
    const writer = writerFontOrThrow(document);
    return {
      ...run,
      width: document.widthOfString(run.text) * POINT,
      writer,
      encoded: once(() => writer.encoded(run.text)),
    };
  };
  const known: Readonly<Record<PaperFont, Map<string, MeasuredText>>> = { regular: new Map(), bold: new Map() };
  const measured = (text: string, font: PaperFont): MeasuredText => {
    const before = known[font].get(text);
    if (before) return before;
    const runs = splitRuns(printable(text), facesOf(font), knows).map(measuredRun);
    const made = { runs, width: runs.reduce((sum, run) => sum + run.width, 0) };
    known[font].set(text, made);
    return made;
  };
  return {
    runs: (text, font) => measured(text, font).runs,
    lacks: (text) => [
      ...new Set([...printable(text)].filter((letter) => drawable(letter, facesOf('regular'), knows) === null)),
    ],
    measure: (text, font, points) => measured(text, font).width * points,
  };
}

interface MeasuredText {
  readonly runs: readonly MeasuredRun[];
  /** Millimetres at one point. */
  readonly width: number;
}

/** Only what is drawn is encoded, since every letter encoded is put into the file's fonts. */
function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** One line of plain text: composed letters, no control or direction marks, single spaces. */
export const printable = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\s+/g, ' ');

/** A letter, or else the same without its accents, and the first file that has it; null where none has. */
function drawable(
  letter: string,
  faces: readonly [string, string],
  knows: (file: string, letter: string) => boolean,
): readonly [form: string, file: string] | null {
  for (const file of faces) if (knows(file, letter)) return [letter, file];
  const bare = letter.normalize('NFD').charAt(0);
  for (const file of faces) if (knows(file, bare)) return [bare, file];
  return null;
}

function splitRuns(
  text: string,
  faces: readonly [string, string],
  knows: (file: string, letter: string) => boolean,
): readonly Run[] {
  const runs: { face: string; text: string }[] = [];
  for (const letter of text) {
    const [drawn, face] = drawable(letter, faces, knows) ?? [NO_LETTER, faces[0]];
    const last = runs.at(-1);
    if (last?.face === face) last.text += drawn;
    else runs.push({ face, text: drawn });
  }
  return runs;
}

/** Registers a file with the document when first asked about, and says whether it has a letter. */
function letterTest(document: PDFKit.PDFDocument): (file: string, letter: string) => boolean {
  const fonts = new Map<string, WriterFont>();
  const fontOf = (file: string): WriterFont => {
    const known = fonts.get(file);
    if (known) return known;
    document.registerFont(file, bytesOf(file)).font(file);
    const font = writerFontOrThrow(document);
    fonts.set(file, font);
    return font;
  };
  return (file, letter) => fontOf(file).has(letter);
}
