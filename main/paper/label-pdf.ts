import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import QRCode from 'qrcode';
import type { LabelText } from '../../shared/contract/print.ts';
import { type LabelSheet, labelPlace } from '../../shared/model/label-sheet.ts';
import { type LabelFont, type LabelLayout, layOutLabel, type Measure, qrCore } from './label-layout.ts';

export interface LabelPaper {
  readonly title: string;
  readonly sheet: LabelSheet;
  readonly labels: readonly LabelText[];
  /** First free label, from 1. */
  readonly startAt: number;
  readonly pencilLine: boolean;
  readonly qr: boolean;
  /** Cut lines, for plain paper. */
  readonly outline: boolean;
  /** ISO instant for the document's own record; the same input gives the same bytes. */
  readonly madeAt: string;
}

const POINTS_A_MILLIMETRE = 72 / 25.4;
const mm = (millimetres: number): number => millimetres * POINTS_A_MILLIMETRE;

const require = createRequire(import.meta.url);
const FONT_FILES: Readonly<Record<LabelFont, string>> = {
  regular: '@expo-google-fonts/atkinson-hyperlegible-next/500Medium/AtkinsonHyperlegibleNext_500Medium.ttf',
  bold: '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf',
};
const fontBytes = (font: LabelFont): Buffer => readFileSync(require.resolve(FONT_FILES[font]));

/** The labels as a PDF in exact millimetres, black only, with fonts embedded, to be printed at its true size. */
export async function labelPdf(paper: LabelPaper): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const { sheet } = paper;
  const document = openDocument(paper);
  const measure: Measure = (text, font, points) =>
    document.font(font).fontSize(points).widthOfString(text) / POINTS_A_MILLIMETRE;
  let pages = 0;
  paper.labels.forEach((label, index) => {
    const place = labelPlace(sheet, index + paper.startAt - 1);
    while (pages <= place.page) {
      document.addPage({ size: [mm(sheet.paperWidth), mm(sheet.paperHeight)], margin: 0 });
      pages += 1;
    }
    const code = paper.qr ? qrMatrix(label) : null;
    const layout = layOutLabel(label, sheet, { pencilLine: paper.pencilLine, qrModules: code?.size ?? null }, measure);
    drawLabel(document, layout, place, code);
    if (paper.outline)
      document
        .lineWidth(0.4)
        .rect(mm(place.x), mm(place.y), mm(sheet.labelWidth), mm(sheet.labelHeight))
        .stroke('#000000');
  });
  return { bytes: await finish(document), pages };
}

function openDocument({ title, madeAt }: LabelPaper): PDFKit.PDFDocument {
  const document = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    pdfVersion: '1.7',
    lang: 'en',
    info: { Title: title, Producer: 'Ripecell', Creator: 'Ripecell', CreationDate: new Date(madeAt) },
  });
  for (const font of ['regular', 'bold'] as const) document.registerFont(font, fontBytes(font));
  // The viewer is asked to print at true size; "fit to page" would shift every label. PDF 32000-1, table 150.
  catalogOf(document).ViewerPreferences = document.ref({ PrintScaling: 'None' });
  return document;
}

/** The document's root dictionary; the writer has no public way to set viewer preferences. */
function catalogOf(document: PDFKit.PDFDocument): Record<string, unknown> {
  const { _root: root } = document as unknown as { readonly _root: { readonly data: Record<string, unknown> } };
  return root.data;
}

function drawLabel(
  document: PDFKit.PDFDocument,
  layout: LabelLayout,
  at: { readonly x: number; readonly y: number },
  code: Matrix | null,
): void {
  drawStrip(document, layout.strip, at);
  document.fillColor('#000000');
  for (const { text, font, points, x, y } of layout.texts)
    document
      .font(font)
      .fontSize(points)
      .text(text, mm(at.x + x), mm(at.y + y), { lineBreak: false, baseline: 'alphabetic' });
  if (layout.pencilLine) {
    const { x, y, width } = layout.pencilLine;
    document
      .lineWidth(0.5)
      .moveTo(mm(at.x + x), mm(at.y + y))
      .lineTo(mm(at.x + x + width), mm(at.y + y))
      .stroke('#000000');
  }
  if (layout.qr && code) {
    const core = qrCore(layout.qr, code.size);
    drawMatrix(document, code, mm(at.x + core.x), mm(at.y + core.y), mm(core.size));
  }
}

const HATCH_STEP = 1.6;

/** A frame with hatched ends: seen as "hands off" before it is read, and it costs hardly any ink. */
function drawStrip(
  document: PDFKit.PDFDocument,
  strip: LabelLayout['strip'],
  at: { readonly x: number; readonly y: number },
): void {
  const [x, y, width, height] = [mm(at.x + strip.x), mm(at.y + strip.y), mm(strip.width), mm(strip.height)];
  document.save().rect(x, y, width, height).clip().lineWidth(0.35);
  for (let offset = -height; offset < width; offset += mm(HATCH_STEP))
    document
      .moveTo(x + offset, y + height)
      .lineTo(x + offset + height, y)
      .stroke('#9a9a9a');
  document.restore();
  document.rect(x, y, Math.min(width, mm(strip.clear)), height).fill('#ffffff');
  document.lineWidth(0.9).rect(x, y, width, height).stroke('#000000');
}

interface Matrix {
  readonly size: number;
  readonly dark: (row: number, column: number) => boolean;
}

/** What a phone reads from the code: box, batch and next look in plain capitals, no address, of use without a network. */
export const qrText = (label: LabelText): string => `${label.box} ${label.batch} ${label.firstLookOn}`.toUpperCase();

/** ISO/IEC 18004 matrix at level Q (a quarter may be soiled), mask chosen by the standard's penalty. */
export function qrMatrix(label: LabelText): Matrix {
  const { modules } = QRCode.create(qrText(label), { errorCorrectionLevel: 'Q' });
  return { size: modules.size, dark: (row, column) => modules.get(row, column) === 1 };
}

/**
 * One bit a module as an inline image: small, sharp at any size, no seams between rows. The page's y axis is turned
 * over by the PDF writer, so the image is drawn with negative height, else the code would be mirrored.
 */
function drawMatrix(document: PDFKit.PDFDocument, { size, dark }: Matrix, x: number, y: number, side: number): void {
  const rows = Array.from({ length: size }, (_, row) => rowBytes(size, (column) => dark(row, column)));
  const hex = rows.map((row) => Buffer.from(row).toString('hex')).join('');
  document.addContent(
    `q ${side} 0 0 ${-side} ${x} ${y + side} cm BI /W ${size} /H ${size} /IM true /BPC 1 /D [1 0] /F /AHx ID ${hex}> EI Q`,
  );
}

function rowBytes(size: number, dark: (column: number) => boolean): readonly number[] {
  const bytes = new Array<number>(Math.ceil(size / 8)).fill(0);
  for (let column = 0; column < size; column += 1) {
    const byte = Math.floor(column / 8);
    if (dark(column)) bytes[byte] = (bytes[byte] ?? 0) | (0x80 >> (column % 8));
  }
  return bytes;
}

function finish(document: PDFKit.PDFDocument): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    document.on('data', (part: Buffer) => parts.push(part));
    document.on('end', () => resolve(Buffer.concat(parts)));
    document.on('error', reject);
    document.end();
  });
}
