import QRCode from 'qrcode';
import type { LabelFace } from '../../shared/contract/print.ts';

/** A square code; `rows` hold one bit a module, dark = 1, each row begun at a whole byte. */
export interface QrCode {
  readonly modules: number;
  readonly rows: Uint8Array;
}

/** Letters, marks and digits that the code holds in 5.5 bits each (ISO/IEC 18004, alphanumeric mode) are capitals only. */
export const qrText = ({ box, batch, firstLookOn, linesAsTheyAre = false }: LabelFace): string =>
  [box, batch, linesAsTheyAre ? '' : withoutWeekday(firstLookOn)].filter(Boolean).join(' ').toUpperCase();

/** "Tue 26 May" as "26May": with a box code of four, 16 letters, just what the smallest code holds at this safety. */
const withoutWeekday = (day: string): string => day.replace(/^\p{L}+,? /u, '').replaceAll(' ', '');

/** ISO/IEC 18004 at level Q (a quarter may be soiled), the mask chosen by the standard's penalty. */
export function qrCode(label: LabelFace): QrCode {
  const { modules: matrix } = QRCode.create(qrText(label), { errorCorrectionLevel: 'Q' });
  const rowBytes = Math.ceil(matrix.size / 8);
  const rows = new Uint8Array(rowBytes * matrix.size);
  for (let row = 0; row < matrix.size; row += 1)
    for (let column = 0; column < matrix.size; column += 1)
      if (matrix.get(row, column)) {
        const at = row * rowBytes + (column >> 3);
        rows[at] = (rows[at] ?? 0) | (0x80 >> (column & 7));
      }
  return { modules: matrix.size, rows };
}

/**
 * The code as a picture of one bit a module inside the page: small, sharp at any size, without seams. All in points. The
 * page's y axis points down here, so the picture is drawn with negative height; else the code would be mirrored.
 */
export function qrContent({ modules, rows }: QrCode, x: number, y: number, side: number): string {
  const number = (value: number): string => String(Math.round(value * 1000) / 1000);
  const at = `${number(side)} 0 0 ${number(-side)} ${number(x)} ${number(y + side)} cm`;
  const hex = Buffer.from(rows).toString('hex');
  return `q ${at} BI /W ${modules} /H ${modules} /IM true /D [1 0] /BPC 1 /F /AHx ID ${hex}> EI Q`;
}

/** The same, row by row as text, 1 = dark. */
export function qrRows({ modules, rows }: QrCode): readonly string[] {
  const rowBytes = Math.ceil(modules / 8);
  return Array.from({ length: modules }, (_, row) =>
    Array.from(rows.subarray(row * rowBytes, (row + 1) * rowBytes), (byte) => byte.toString(2).padStart(8, '0'))
      .join('')
      .slice(0, modules),
  );
}
