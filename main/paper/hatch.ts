import { inPoints, type PaperDocument } from './paper-document.ts';

const LINE = 0.25;
const STEP = 1.1;

/**
 * Hatches stretches of one row. One broad dashed line in a slanted frame of reference, cut to the stretches: a few bytes
 * whatever its length. All in millimetres.
 */
export function hatch(
  { pdf }: PaperDocument,
  stretches: readonly { readonly x: number; readonly width: number }[],
  y: number,
  height: number,
): void {
  const from = Math.min(...stretches.map(({ x }) => x));
  const to = Math.max(...stretches.map(({ x, width }) => x + width));
  pdf.save();
  for (const { x, width } of stretches)
    if (width > 0) pdf.rect(inPoints(x), inPoints(y), inPoints(width), inPoints(height));
  pdf.clip().transform(1, 0, -1, 1, inPoints(y), 0);
  pdf
    .lineWidth(inPoints(height))
    .dash(inPoints(LINE), { space: inPoints(STEP - LINE) })
    .moveTo(inPoints(from), inPoints(y + height / 2))
    .lineTo(inPoints(to + height), inPoints(y + height / 2))
    .stroke()
    .restore();
}
