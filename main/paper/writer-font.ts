/**
 * The three things asked of the PDF writer that it has no public way to answer: which letters a font has, how a text is
 * written in a font's own glyph numbers, and how a page is told of a font. The writer's version is pinned, every part is
 * looked for before it is used, and the tests read the printed words back.
 */
export interface WriterFont {
  has(letter: string): boolean;
  /** The operand of the text-showing operator, kerning included; null where letters stand off their line. */
  encoded(text: string): string | null;
  /** The font's name on the page now open, which is told of it. */
  nameOnPage(): string;
}

interface GlyphPlace {
  readonly xAdvance: number;
  readonly advanceWidth: number;
  readonly xOffset: number;
  readonly yOffset: number;
}

interface Inside {
  readonly id: string;
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean };
  encode(text: string): readonly [readonly string[], readonly GlyphPlace[]];
  ref(): unknown;
}

/** The font now in use by the document. */
export function writerFontOrThrow(pdf: PDFKit.PDFDocument): WriterFont {
  const { _font: inside } = pdf as unknown as { readonly _font?: Partial<Inside> };
  if (typeof inside?.encode !== 'function' || typeof inside.ref !== 'function' || typeof inside.id !== 'string')
    throw new Error('the PDF writer hides its fonts');
  if (typeof inside.font?.hasGlyphForCodePoint !== 'function') throw new Error('the PDF writer hides its letters');
  const font = inside as Inside;
  return {
    has: (letter) => font.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0),
    encoded: (text) => shown(...font.encode(text)),
    nameOnPage: () => {
      const { fonts } = pdf.page as unknown as { readonly fonts: Record<string, unknown> };
      fonts[font.id] ??= font.ref();
      return font.id;
    },
  };
}

/** Glyph numbers in hex, with the moves between them in thousandths of the size (PDF 32000-1, 9.4.3, operator TJ). */
function shown(glyphs: readonly string[], places: readonly GlyphPlace[]): string | null {
  if (places.some(({ xOffset, yOffset }) => xOffset !== 0 || yOffset !== 0)) return null;
  let text = '<';
  for (const [index, glyph] of glyphs.entries()) {
    text += glyph;
    const place = places[index];
    const move = place ? Math.round(place.advanceWidth - place.xAdvance) : 0;
    if (move !== 0 && index < glyphs.length - 1) text += `>${move}<`;
  }
  return `[${text}>]`;
}
