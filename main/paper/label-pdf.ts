import type { LabelLook } from '../../shared/contract/plain-labels.ts';
import type { LabelFace, LabelPicture } from '../../shared/contract/print.ts';
import { type LabelSheet, labelPlace } from '../../shared/model/label-sheet.ts';
import { hatch } from './hatch.ts';
import type { HatchedStrip } from './label-blocks.ts';
import { type LabelLayout, layOutLabel, leastQrSide } from './label-layout.ts';
import { labelRows } from './label-rows.ts';
import { inPoints, openPaper, type PaperDocument, write } from './paper-document.ts';
import { printable } from './paper-fonts.ts';
import { type Correction, moveTo } from './printer-correction.ts';
import { type QrCode, qrCode, qrContent, qrRows } from './qr-code.ts';
import { asOrnament, type Part, taggedParts } from './tagged-parts.ts';

export interface LabelPaper {
  readonly title: string;
  readonly language: string;
  readonly sheet: LabelSheet;
  readonly labels: readonly LabelFace[];
  /** First free label, from 1. */
  readonly startAt: number;
  readonly pencilLine: boolean;
  readonly qr: boolean;
  /** Cut lines, for plain paper. */
  readonly outline: boolean;
  /** How the printer shifts and stretches; null or absent = as told. */
  readonly printer?: Correction | null;
  /** ISO instant for the document's own record; the same input gives the same bytes. */
  readonly madeAt: string;
}

export type LabelPdf =
  | { readonly kind: 'made'; readonly bytes: Buffer; readonly pages: number }
  /** A square code would be too fine to read; the side it needs with its white border. */
  | { readonly kind: 'code-does-not-fit'; readonly neededMillimetres: number };

/** A paper that is only measured by. */
const UNWRITTEN = { title: '', madeAt: '2000-01-01T00:00:00Z', language: 'en' } as const;

const OUTLINE = 0.1;
const FRAME = 0.3;
const PENCIL_LINE = 0.15;
/** To be read aloud a label costs some 100 bytes (measured on 1,000); so many more would pass the goal for the size of the file. */
const MOST_TAGGED = 300;

/** The labels as a PDF in exact millimetres, black only, with fonts embedded, to be printed at its true size. */
export async function labelPdf(paper: LabelPaper): Promise<LabelPdf> {
  const { sheet } = paper;
  const tagged = paper.labels.length <= MOST_TAGGED;
  const document = openPaper({ ...paper, tagged });
  const root = tagged ? taggedParts(document.pdf) : null;
  const list = root?.inside('L') ?? null;
  const rows = labelRows(document.measure);
  let pages = 0;
  for (const [index, raw] of paper.labels.entries()) {
    const label = cleaned(raw);
    const code = paper.qr ? qrCode(label) : null;
    const shows = { pencilLine: paper.pencilLine, qrModules: code?.modules ?? null };
    const layout = layOutLabel(label, sheet, shows, rows);
    if (!layout) return { kind: 'code-does-not-fit', neededMillimetres: leastQrSide(code?.modules ?? 0) };
    const place = labelPlace(sheet, index + paper.startAt - 1);
    while (pages <= place.page) {
      document.addPage(sheet.paperWidth, sheet.paperHeight);
      pages += 1;
    }
    document.pdf.save();
    moveTo(document, place.x, place.y, paper.printer ?? null);
    if (paper.outline)
      drawOrnament(document, tagged, () => document.rectangle(0, 0, sheet.labelWidth, sheet.labelHeight, OUTLINE));
    drawLabel(document, layout, code, list);
    document.pdf.restore();
  }
  root?.close();
  return { kind: 'made', bytes: await document.finish(), pages };
}

/** The same label for the window: where each word and module lies. Null when a square code has no room. */
export function labelPicture(
  raw: LabelFace,
  sheet: LabelSheet,
  shows: { readonly qr: boolean; readonly pencilLine: boolean },
): LabelPicture | null {
  const label = cleaned(raw);
  const code = shows.qr ? qrCode(label) : null;
  const { measure } = openPaper(UNWRITTEN);
  const wish = { pencilLine: shows.pencilLine, qrModules: code?.modules ?? null };
  const layout = layOutLabel(label, sheet, wish, labelRows(measure));
  if (!layout) return null;
  return {
    texts: layout.texts.map(({ text, font, points, x, y, width }) => ({
      text,
      bold: font === 'bold',
      points,
      x,
      y,
      width,
    })),
    strip: layout.strip,
    pencilLine: layout.pencilLine,
    qr: layout.qr && code ? { x: layout.qr.x, y: layout.qr.y, module: layout.qr.module, rows: qrRows(code) } : null,
    omitted: shows.pencilLine && !layout.pencilLine ? [...layout.omitted, 'pencilLine'] : layout.omitted,
  };
}

/** The first label for the window, with what is to be known before any of them is printed. */
export function labelLook(
  labels: readonly LabelFace[],
  sheet: LabelSheet,
  shows: { readonly qr: boolean; readonly pencilLine: boolean },
): LabelLook | null {
  const [first] = labels;
  if (!first) return null;
  const { lacks, measure } = openPaper(UNWRITTEN);
  const rows = labelRows(measure);
  const tooFine = labels.map(cleaned).find((label) => {
    const qrModules = shows.qr ? qrCode(label).modules : null;
    return qrModules !== null && layOutLabel(label, sheet, { ...shows, qrModules }, rows) === null;
  });
  return {
    picture: labelPicture(first, sheet, shows),
    codeNeeds: tooFine ? leastQrSide(qrCode(tooFine).modules) : null,
    unprintable: labels.flatMap((label) => {
      const letters = lacks(
        Object.values(label)
          .filter((words) => typeof words === 'string')
          .join(''),
      );
      return letters.length > 0 ? [{ label: label.box, letters }] : [];
    }),
  };
}

/** Names are the person's own: whatever they hold, they are drawn as one line of letters. */
function cleaned(words: LabelFace): LabelFace {
  const clean = (text: string): string => printable(text).trim() || '-';
  const { language, linesAsTheyAre = false } = words;
  const line = (text: string): string => (linesAsTheyAre && text === '' ? '' : clean(text));
  return {
    language,
    box: clean(words.box),
    batch: clean(words.batch),
    mother: clean(words.mother),
    yearColour: words.yearColour === '' ? '' : clean(words.yearColour),
    handsOffUntil: words.handsOffUntil === null ? null : clean(words.handsOffUntil),
    firstLookOn: line(words.firstLookOn),
    sealedBroodLookOn: line(words.sealedBroodLookOn),
    linesAsTheyAre,
  };
}

/** Drawn from the label's own corner, so that equal labels are equal bytes and the file stays small. */
function drawLabel(document: PaperDocument, layout: LabelLayout, code: QrCode | null, list: Part | null): void {
  const { texts, strip, pencilLine } = layout;
  const drawWords = () => {
    for (const { text, font, points, x, y } of texts) document.text(text, font, points, x, y);
  };
  if (list) list.draw('LI', drawWords);
  else drawWords();
  drawOrnament(document, list !== null, () => {
    if (strip) drawStrip(document, strip);
    if (pencilLine)
      document.line(pencilLine.x, pencilLine.y, pencilLine.x + pencilLine.width, pencilLine.y, PENCIL_LINE);
    drawCode(document, layout, code);
  });
}

/** In a paper that is read aloud, what is no word is said to be none. */
function drawOrnament({ pdf }: PaperDocument, tagged: boolean, draw: () => void): void {
  if (tagged) asOrnament(pdf, draw);
  else draw();
}

function drawCode(document: PaperDocument, layout: LabelLayout, code: QrCode | null): void {
  if (layout.qr && code) {
    const { x, y, size } = layout.qr;
    write(document.pdf, qrContent(code, inPoints(x), inPoints(y), inPoints(size)));
  }
}

/** A frame with hatched ends: seen as "hands off" before it is read, and it costs hardly any ink. */
function drawStrip(document: PaperDocument, { x, y, width, height, clearFrom, clearTo }: HatchedStrip): void {
  const ends = [
    { x, width: clearFrom - x },
    { x: clearTo, width: x + width - clearTo },
  ];
  hatch(document, ends, y, height);
  document.rectangle(x, y, width, height, FRAME);
}
