import PDFDocument from 'pdfkit';
import { openFonts, type PaperFonts } from './paper-fonts.ts';
import { type PaperFont, POINT } from './text-fit.ts';

/** A PDF measured in millimetres, with the fonts of the house; black only. */
export interface PaperDocument extends PaperFonts {
  readonly pdf: PDFKit.PDFDocument;
  addPage(width: number, height: number): void;
  /** Draws one line; `y` is the baseline. */
  text(text: string, font: PaperFont, points: number, x: number, y: number): void;
  line(x: number, y: number, toX: number, toY: number, width: number): void;
  rectangle(x: number, y: number, width: number, height: number, lineWidth: number): void;
  /** Paper white over what was drawn. */
  clear(x: number, y: number, width: number, height: number): void;
  finish(): Promise<Buffer>;
}

/** To a hundredth of a point (0.0035 mm), far below what a printer can do; more digits only make the file larger. */
export const inPoints = (millimetres: number): number => Math.round((millimetres / POINT) * 100) / 100;

/** Letters need no more: 0.035 mm. */
const tenthOfPoint = (millimetres: number): number => Math.round((millimetres / POINT) * 10) / 10;

export interface PaperWish {
  readonly title: string;
  /** ISO instant; the same input gives the same bytes. */
  readonly madeAt: string;
  /** The tongue in which a reading program speaks it. */
  readonly language: string;
  /** Says which words are heading, paragraph or cell, and in what order they are read aloud. */
  readonly tagged?: boolean;
  /** In the letters of a book instead of those of the window. */
  readonly serif?: boolean;
  /** Keeps all pages open, so that the last can tell the first how many there are. */
  readonly keepPages?: boolean;
}

export function openPaper(wish: PaperWish): PaperDocument {
  const { title, madeAt, language, tagged = false, serif = false, keepPages = false } = wish;
  const pdf = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    pdfVersion: '1.7',
    lang: language,
    tagged,
    bufferPages: keepPages,
    info: { Title: title, Creator: 'Ripecell', CreationDate: new Date(madeAt) },
  });
  // The viewer is asked to print at true size; "fit to page" would shift every label. PDF 32000-1, table 150.
  catalogOrThrow(pdf).ViewerPreferences = pdf.ref({ PrintScaling: 'None', DisplayDocTitle: true });
  const fonts = openFonts(pdf, serif);
  return {
    ...fonts,
    pdf,
    addPage: (width, height) => {
      pdf.addPage({ size: [inPoints(width), inPoints(height)], margin: 0 });
    },
    text: (text, font, points, x, y) => {
      let from = x;
      for (const run of fonts.runs(text, font)) {
        const [at, up] = [tenthOfPoint(from), tenthOfPoint(y)];
        const encoded = run.encoded();
        if (encoded === null)
          pdf.font(run.face).fontSize(points).text(run.text, at, up, { lineBreak: false, baseline: 'alphabetic' });
        // The page's y axis points down; letters are turned back up.
        else write(pdf, `BT /${run.writer.nameOnPage()} ${points} Tf 1 0 0 -1 ${at} ${up} Tm ${encoded} TJ ET`);
        from += run.width * points;
      }
    },
    line: (x, y, toX, toY, width) => {
      pdf.lineWidth(inPoints(width)).moveTo(inPoints(x), inPoints(y)).lineTo(inPoints(toX), inPoints(toY)).stroke();
    },
    rectangle: (x, y, width, height, lineWidth) => {
      pdf.lineWidth(inPoints(lineWidth)).rect(inPoints(x), inPoints(y), inPoints(width), inPoints(height)).stroke();
    },
    clear: (x, y, width, height) => {
      pdf.rect(inPoints(x), inPoints(y), inPoints(width), inPoints(height)).fill('white').fillColor('black');
    },
    finish: () => finish(pdf),
  };
}

/** Adds to the page as bytes: text is turned into them sign by sign by the PDF writer, which takes its time. */
export const write = (pdf: PDFKit.PDFDocument, content: string): void => {
  pdf.addContent(Buffer.from(`${content}\n`, 'latin1'));
};

/** The document's root dictionary; the writer has no public way to set viewer preferences. */
function catalogOrThrow(pdf: PDFKit.PDFDocument): Record<string, unknown> {
  const { _root: root } = pdf as unknown as { readonly _root?: { readonly data?: Record<string, unknown> } };
  if (!root?.data) throw new Error('the PDF writer hides its catalogue');
  return root.data;
}

function finish(pdf: PDFKit.PDFDocument): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    pdf.on('data', (part: Buffer) => parts.push(part));
    pdf.on('end', () => resolve(Buffer.concat(parts)));
    pdf.on('error', reject);
    pdf.end();
  });
}
