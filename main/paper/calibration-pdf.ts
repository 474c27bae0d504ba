import { type LabelSheet, labelPlace, labelsOnSheet } from '../../shared/model/label-sheet.ts';
import { BAR, CROSS } from '../../shared/model/printer.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { type Correction, moveTo } from './printer-correction.ts';
import { asOrnament, taggedParts } from './tagged-parts.ts';
import { POINT, wrapText } from './text-fit.ts';

export interface CalibrationPaper {
  /** In the language of the workbook. */
  readonly words: Words['calibration'];
  readonly language: string;
  readonly sheet: LabelSheet;
  /** Null for a printer not measured yet. */
  readonly printer: (Correction & { readonly name: string }) | null;
  /** Larger words; what is measured stays as it is. */
  readonly large: boolean;
  readonly madeAt: string;
}

const FINE = 0.1;
/** Points, the heading first; large print is 16 pt and more. */
const SIZES = { usual: [14, 10], large: [22, 16] } as const;
/** Below this width or height a label roll has no room for the cross and its bars. */
const LEAST_SIDE = 130;

/**
 * A cross 20 mm from the left and upper edge, two bars of 100 mm from it with a tick each millimetre, and the outlines of
 * the labels. Rolls are too narrow for that, so they are measured on a page of A4.
 */
export async function calibrationPdf({
  words,
  language,
  sheet,
  printer,
  large,
  madeAt,
}: CalibrationPaper): Promise<Buffer> {
  const document = openPaper({ title: words.title, madeAt, language, tagged: true });
  const roomy = Math.min(sheet.paperWidth, sheet.paperHeight) >= LEAST_SIDE;
  const [width, height] = roomy ? [sheet.paperWidth, sheet.paperHeight] : [210, 297];
  document.addPage(width, height);
  document.pdf.save();
  moveTo(document, 0, 0, printer);
  asOrnament(document.pdf, () => {
    if (roomy) drawOutlines(document, sheet);
    drawCross(document);
    drawBars(document);
  });
  drawWords(document, words, width, { printer: printer?.name ?? null, large });
  document.pdf.restore();
  return document.finish();
}

function drawOutlines(document: PaperDocument, sheet: LabelSheet): void {
  for (let index = 0; index < labelsOnSheet(sheet); index += 1) {
    const { x, y } = labelPlace(sheet, index);
    document.rectangle(x, y, sheet.labelWidth, sheet.labelHeight, FINE);
  }
}

function drawCross(document: PaperDocument): void {
  document.line(CROSS - 6, CROSS, CROSS + 6, CROSS, 0.15);
  document.line(CROSS, CROSS - 6, CROSS, CROSS + 6, 0.15);
}

/** Each bar ends in a stroke; ticks of a millimetre, longer at five and ten. */
function drawBars(document: PaperDocument): void {
  document.line(CROSS, CROSS, CROSS + BAR, CROSS, 0.3);
  document.line(CROSS, CROSS, CROSS, CROSS + BAR, 0.3);
  for (let millimetre = 0; millimetre <= BAR; millimetre += 1) {
    const tick = millimetre === BAR ? 6 : millimetre % 10 === 0 ? 3 : millimetre % 5 === 0 ? 2 : 1;
    document.line(CROSS + millimetre, CROSS, CROSS + millimetre, CROSS + tick, FINE);
    document.line(CROSS, CROSS + millimetre, CROSS + tick, CROSS + millimetre, FINE);
  }
}

function drawWords(
  document: PaperDocument,
  words: Words['calibration'],
  width: number,
  { printer, large }: { readonly printer: string | null; readonly large: boolean },
): void {
  const root = taggedParts(document.pdf);
  const [heading, body] = SIZES[large ? 'large' : 'usual'];
  const left = CROSS + 12;
  let y = CROSS + 16;
  const put = (text: string, type: 'H1' | 'P', font: 'bold' | 'regular', points: number) =>
    root.draw(type, () => {
      for (const line of wrapText(text, font, points, width - left - 15, document.measure)) {
        // The outlines stop where words stand, so that both can be read.
        document.clear(
          left - 1,
          y - points * 0.85 * POINT,
          document.measure(line, font, points) + 2,
          points * 1.15 * POINT,
        );
        document.text(line, font, points, left, y);
        y += points * 1.3 * POINT;
      }
    });
  put(printer === null ? words.title : words.corrected(printer), 'H1', 'bold', heading);
  for (const line of printer === null ? words.howTo : words.howToCheck) put(line, 'P', 'regular', body);
  root.close();
}
