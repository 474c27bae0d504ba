import { GlobalWorkerOptions, getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { OWN_SCRIPTS } from '../../shared/contract/page-policy.ts';
import workerFile from './pdf-worker.ts?worker&url';

/** Not in the DOM types yet; by the W3C's Trusted Types, as much of it as is used here. A checked address goes where a URL goes. */
declare const trustedTypes: {
  createPolicy(
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): URL };
};

/** The page starts no other script by its address: its policy refuses all that does not come from here. */
const ownScripts = trustedTypes.createPolicy(OWN_SCRIPTS, {
  createScriptURL: (address) => {
    if (address !== workerFile) throw new TypeError('not a script of ours');
    return address;
  },
});
GlobalWorkerOptions.workerPort ??= new Worker(ownScripts.createScriptURL(workerFile), {
  type: 'module',
});

/** The pages of a PDF, to be drawn one at a time. */
export interface PdfPages {
  readonly count: number;
  /** Draws a page, from 1, so many dots wide; answers its words in reading order. */
  draw(page: number, canvas: HTMLCanvasElement, dotsWide: number): Promise<string>;
  close(): void;
}

/** Opens a PDF made here. Nothing is fetched: its fonts are inside it. */
export async function readPdfPages(base64: string): Promise<PdfPages> {
  const data = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const reading = getDocument({ data, verbosity: 0, useSystemFonts: false });
  const pdf = await reading.promise;
  return {
    count: pdf.numPages,
    draw: (page, canvas, dotsWide) => drawPage(pdf, page, canvas, dotsWide),
    close: () => void reading.destroy(),
  };
}

/** On a canvas of its own first: two drawings at once on one canvas would be refused. */
async function drawPage(
  pdf: PDFDocumentProxy,
  number: number,
  canvas: HTMLCanvasElement,
  dotsWide: number,
): Promise<string> {
  const page = await pdf.getPage(number);
  const viewport = page.getViewport({ scale: dotsWide / page.getViewport({ scale: 1 }).width });
  const drawn = document.createElement('canvas');
  drawn.width = Math.round(viewport.width);
  drawn.height = Math.round(viewport.height);
  await page.render({ canvas: drawn, viewport, intent: 'print' }).promise;
  canvas.width = drawn.width;
  canvas.height = drawn.height;
  canvas.getContext('2d')?.drawImage(drawn, 0, 0);
  const { items } = await page.getTextContent();
  return items.flatMap((item) => ('str' in item && item.str.trim() ? [item.str] : [])).join(' ');
}
