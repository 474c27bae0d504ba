import type { Printer } from '../../shared/model/printer.ts';
import { inPoints, type PaperDocument } from './paper-document.ts';

export type Correction = Pick<Printer, 'shiftX' | 'shiftY' | 'stretchX' | 'stretchY'>;

/** Where a place must be asked for so that the printer puts it where it is meant; all in millimetres. */
export const askedFor = (correction: Correction, x: number, y: number): { readonly x: number; readonly y: number } => ({
  x: (x - correction.shiftX) / correction.stretchX,
  y: (y - correction.shiftY) / correction.stretchY,
});

/** Moves what is drawn next to that corner of the page, allowing for the printer. The state is to be saved before. */
export function moveTo({ pdf }: PaperDocument, x: number, y: number, correction: Correction | null): void {
  if (correction === null) {
    pdf.translate(inPoints(x), inPoints(y));
    return;
  }
  const at = askedFor(correction, x, y);
  pdf.transform(1 / correction.stretchX, 0, 0, 1 / correction.stretchY, inPoints(at.x), inPoints(at.y));
}
