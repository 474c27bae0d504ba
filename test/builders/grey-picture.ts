// Papers as small grey pictures: drawn by pdfjs on the canvas it brings along, with the fonts that are in the file, so that
// no browser and no font of the machine has a hand in them; and written and read as PNG by hand (ISO/IEC 15948), since
// only this one kind of it is needed.
import { crc32, deflateSync, inflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Dots from 0, black, to 15, white, row by row. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

const WHITE = 15;

/** One page, from 1, at so many dots to the inch. */
export async function drawGrey(pdf: Uint8Array, page: number, dotsPerInch: number): Promise<GreyPicture> {
  const reading = getDocument({ data: new Uint8Array(pdf), verbosity: 0, useSystemFonts: false });
  const document = await reading.promise;
  const drawn = await document.getPage(page);
  const viewport = drawn.getViewport({ scale: dotsPerInch / 72 });
  const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
  const { canvas, context } = (document.canvasFactory as CanvasFactory).create(width, height);
  await drawn.render({ canvas, viewport, intent: 'print' }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  await reading.destroy();
  return { width, height, dots: Uint8Array.from({ length: width * height }, (_, dot) => greyOf(data, dot * 4)) };
}

interface CanvasFactory {
  create(
    width: number,
    height: number,
  ): { readonly canvas: HTMLCanvasElement; readonly context: CanvasRenderingContext2D };
}

/** Weights of ITU-R BT.601, from memory; papers are black on white, so they hardly matter. */
const greyOf = (data: Uint8ClampedArray, at: number): number =>
  Math.round(((0.299 * (data[at] ?? 0) + 0.587 * (data[at + 1] ?? 0) + 0.114 * (data[at + 2] ?? 0)) / 255) * WHITE);

/** Side of a window in which two pictures are compared, in dots. */
const WINDOW = 12;

/**
 * The greatest mean difference in any window of two pictures of one size, in steps of 16; the windows overlap by half.
 * A whole page hides a word that moved among a million white dots; a window does not.
 */
export function greatestDifference(one: GreyPicture, other: GreyPicture): number {
  if (one.width !== other.width || one.height !== other.height) return WHITE;
  let greatest = 0;
  for (let top = 0; top < one.height; top += WINDOW / 2)
    for (let left = 0; left < one.width; left += WINDOW / 2)
      greatest = Math.max(greatest, inWindow(one, other, top, left));
  return greatest;
}

function inWindow(one: GreyPicture, other: GreyPicture, top: number, left: number): number {
  let sum = 0;
  for (let y = top; y < Math.min(top + WINDOW, one.height); y += 1)
    for (let x = left; x < Math.min(left + WINDOW, one.width); x += 1) {
      const at = y * one.width + x;
      sum += Math.abs((one.dots[at] ?? 0) - (other.dots[at] ?? 0));
    }
  return sum / (WINDOW * WINDOW);
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const BITS = 4;

/** Grey, four bits a dot, no filter. */
export function pngOf({ width, height, dots }: GreyPicture): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = BITS;
  const line = 1 + Math.ceil(width / 2);
  const lines = Buffer.alloc(line * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = y * line + 1 + (x >> 1);
      lines[at] = (lines[at] ?? 0) | ((dots[y * width + x] ?? 0) << (x % 2 === 0 ? BITS : 0));
    }
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(lines, { level: 9 })),
    chunk('IEND'),
  ]);
}

function chunk(type: string, data: Buffer = Buffer.alloc(0)): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}

/** A picture written by `pngOf`; any other kind of PNG is refused. */
export function readPng(png: Buffer): GreyPicture {
  const [width, height] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  if (!png.subarray(0, 8).equals(SIGNATURE) || png[24] !== BITS || png[25] !== 0) throw new Error('not a kept picture');
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at))
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  const lines = inflateSync(Buffer.concat(parts));
  const line = 1 + Math.ceil(width / 2);
  const dots = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      dots[y * width + x] = ((lines[y * line + 1 + (x >> 1)] ?? 0) >> (x % 2 === 0 ? BITS : 0)) & WHITE;
  return { width, height, dots };
}
