import { expect, test } from 'vitest';
import { printCalibration } from '../../../../main/operations/print/print-calibration.ts';
import { savePrinter } from '../../../../main/operations/print/save-printer.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { readings } from '../../../builders/own-sheet.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const A4_SHEET = 'a4-3x7-63.5x38.1';
const bytesOf = async (sheet: string, printer: string | null = null, desk = aDesk()) =>
  Buffer.from(mustOk(await printCalibration(desk, { sheet, printer })).base64, 'base64');

test.each([
  [A4_SHEET, 210, 297],
  ['letter-2x5-101.6x50.8', 215.9, 279.4],
  ['roll-62', 210, 297],
])('for %s is a page of %s x %s mm at true size that says how to measure', async (sheet, width, height) => {
  const { pages, printScaling } = await readPdf(await bytesOf(sheet));
  expect(pages).toHaveLength(1);
  expect([pages[0]?.width, pages[0]?.height]).toEqual([expect.closeTo(width, 2), expect.closeTo(height, 2)]);
  expect(printScaling).toBe('None');
  expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('“Actual size”');
});

test('draws both bars 100 mm long from the cross at 20 mm', async () => {
  const lines = await linesOf(await bytesOf(A4_SHEET));
  expect(lines).toContainEqual({ x: 20, y: 20, toX: 120, toY: 20 });
  expect(lines).toContainEqual({ x: 20, y: 20, toX: 20, toY: 120 });
});

test('for a measured printer stands where that printer will put it right', async () => {
  const desk = aDesk();
  mustOk(savePrinter(desk, { name: 'kitchen', ...readings }));
  const plain = (await readPdf(await bytesOf(A4_SHEET, null, desk))).pages[0]?.texts[0];
  const corrected = (await readPdf(await bytesOf(A4_SHEET, 'kitchen', desk))).pages[0]?.texts[0];
  expect(corrected?.text).toBe('Calibration page, corrected for kitchen');
  expect(0.4 + 0.998 * (corrected?.x ?? 0)).toBeCloseTo(plain?.x ?? 0, 1);
});

test('in large print has words of 16 pt and more; what is measured stays', async () => {
  const { base64 } = mustOk(await printCalibration(aDesk(), { sheet: A4_SHEET, printer: null, large: true }));
  const bytes = Buffer.from(base64, 'base64');
  const { pages, spoken } = await readPdf(bytes);
  expect(Math.min(...(pages[0]?.texts ?? []).map(({ points }) => points))).toBeGreaterThanOrEqual(16);
  for (const { text, x, width, y } of pages[0]?.texts ?? []) {
    expect(x + width, text).toBeLessThan(210 - 14.9);
    expect(y, text).toBeLessThan(297 - 14.9);
  }
  expect(await linesOf(bytes)).toEqual(await linesOf(await bytesOf(A4_SHEET)));
  expect(spoken.map(([role]) => role)).toEqual(['H1', 'P', 'P', 'P', 'P', 'P', 'P']);
  expect(spoken[2]?.[1]).toMatch(/^1\. from the left edge/);
});

test('refuses a sheet that is not there', async () => {
  expect(refusalOf(await printCalibration(aDesk(), { sheet: 'own-gone', printer: null }))).toEqual({
    kind: 'label-sheet-missing',
    field: 'sheet',
  });
});

/** Straight strokes of the one page in millimetres from its upper left corner, as the file's own text says them. */
async function linesOf(bytes: Buffer) {
  const { inflateSync } = await import('node:zlib');
  const file = bytes.toString('latin1');
  const streams = [...file.matchAll(/\/Length (\d+)\n[^>]*>>\nstream\n/g)].flatMap((match) => {
    const from = match.index + match[0].length;
    try {
      return [inflateSync(bytes.subarray(from, from + Number(match[1]))).toString('latin1')];
    } catch {
      return [];
    }
  });
  const millimetres = (points: string) => Math.round((Number(points) * 25.4) / 7.2) / 10;
  return streams
    .flatMap((stream) => [...stream.matchAll(/([\d.]+) ([\d.]+) m\n([\d.]+) ([\d.]+) l/g)])
    .map(([, x = '', y = '', toX = '', toY = '']) => ({
      x: millimetres(x),
      y: millimetres(y),
      toX: millimetres(toX),
      toY: millimetres(toY),
    }));
}
