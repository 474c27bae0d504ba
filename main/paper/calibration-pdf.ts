import { type LabelSheet, labelPlace, labelsOnSheet } from '../../shared/model/label-sheet.ts';
import { BAR, CROSS } from '../../shared/model/printer.ts';
import type { Words } from '../../shared/text/english/english.ts';
import { openPaper, type PaperDocument } from './paper-document.ts';
import { type Correction, moveTo } from './printer-correction.ts';
import { POINT, wrapText } from './text-fit.ts';

export interface CalibrationPaper {
  /** In the language of the workbook. */
  readonly words: Words['calibration'];
  readonly sheet: LabelSheet;
  /** Null for a printer not measured yet. */
  readonly printer: (Correction & { readonly name: string }) | null;
  readonly madeAt: string;
}

const FINE = 0.1;
const TEXT = 10;
/** Below this width or height a label roll has no room for the cross and its bars. */
const LEAST_SIDE = 130;

/**
 * A cross 20 mm from the left and upper edge, two bars of 100 mm from it with a tick each millimetre, and the outlines of
 * the labels. Rolls are too narrow for that, so they are measured on a page of A4.
 */
export async function calibrationPdf({ words, sheet, printer, madeAt }: CalibrationPaper): Promise<Buffer> {
  const document = openPaper({ title: words.title, madeAt });
  const roomy = Math.min(sheet.paperWidth, sheet.paperHeight) >= LEAST_SIDE;
  const [width, height] = roomy ? [sheet.paperWidth, sheet.paperHeight] : [210, 297];
  document.addPage(width, height);
  document.pdf.save();
  moveTo(document, 0, 0, printer);
  if (roomy) drawOutlines(document, sheet);
  drawCross(document);
  drawBars(document);
  drawWords(document, words, width, printer?.name ?? null);
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

function drawWords(document: PaperDocument, words: Words['calibration'], width: number, printer: string | null): void {
  const left = CROSS + 12;
  let y = CROSS + 16;
  const put = (text: string, font: 'bold' | 'regular', points: number) => {
    for (const line of wrapText(text, font, points, width - left - 15, document.measure)) {
      document.text(line, font, points, left, y);
      y += points * 1.3 * POINT;
    }
  };
  put(printer === null ? words.title : words.corrected(printer), 'bold', 14);
  for (const line of printer === null ? words.howTo : words.howToCheck) put(line, 'regular', TEXT);
}
