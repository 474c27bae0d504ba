import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import readQr from 'jsqr';
import QRCode from 'qrcode';
import { describe, expect, test } from 'vitest';
import { type LabelPaper, labelPdf } from '../../../main/paper/label-pdf.ts';
import type { LabelText } from '../../../shared/contract/print.ts';
import { type LabelSheetKey, labelSheet } from '../../../shared/model/label-sheet.ts';
import { aLabel } from '../../builders/label-text.ts';
import { type ReadCode, type ReadPdf, readPdf } from '../../builders/read-pdf.ts';

const PAPER = {
  title: 'Labels 26-07',
  language: 'en',
  startAt: 1,
  pencilLine: false,
  qr: false,
  outline: false,
  madeAt: '2026-05-14T12:00:00Z',
};

interface Wish extends Partial<Omit<LabelPaper, 'sheet' | 'labels'>> {
  readonly sheet?: LabelSheetKey;
  readonly labels?: readonly LabelText[];
}

async function bytesOf({ sheet = 'a4-3x7-63.5x38.1', labels = [aLabel()], ...rest }: Wish): Promise<Buffer> {
  const made = await labelPdf({ ...PAPER, ...rest, labels, sheet: labelSheet(sheet) });
  if (made.kind !== 'made') throw new Error(made.kind);
  return made.bytes;
}
const read = async (wish: Wish): Promise<ReadPdf> => readPdf(await bytesOf(wish));
const boxes = (count: number): readonly LabelText[] =>
  Array.from({ length: count }, (_, index) => aLabel({ box: `K${String(index + 1).padStart(2, '0')}` }));
const wordsOf = (pdf: ReadPdf): string => pdf.pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' | ');

// ISO 32000-1, 14.8: what is tagged is read in the order of its structure; all else is an artifact.
describe('read aloud', () => {
  test('is a list with one entry a label, in the order of the sheet, box first and without its code', async () => {
    const { spoken } = await read({ labels: boxes(4), qr: true, pencilLine: true, outline: true });
    expect(spoken.map(([role]) => role)).toEqual(['LI', 'LI', 'LI', 'LI']);
    for (const [index, [, words]] of spoken.entries()) expect(words).toMatch(new RegExp(`^K0${index + 1}\\b.*26-07`));
  });

  test('is left out where more than 300 labels would make the file half as large again', async () => {
    expect((await read({ labels: boxes(300) })).spoken).toHaveLength(300);
    expect((await read({ labels: boxes(301) })).spoken).toEqual([]);
  });
});

describe('the page', () => {
  test('is ISO 216 A4, 210 x 297 mm, and asks the viewer for true size', async () => {
    const { pages, printScaling, title } = await read({});
    expect(pages[0]?.width).toBeCloseTo(210, 2);
    expect(pages[0]?.height).toBeCloseTo(297, 2);
    expect(printScaling).toBe('None');
    expect(title).toBe('Labels 26-07');
  });

  test('is 62 mm wide on the 62 mm roll, one label a page', async () => {
    const { pages } = await read({ sheet: 'roll-62', labels: boxes(3) });
    expect(pages.map(({ width, texts }) => [Math.round(width * 100) / 100, texts[0]?.text])).toEqual([
      [62, 'K01'],
      [62, 'K02'],
      [62, 'K03'],
    ]);
  });

  test('is 8 1/2 x 11 inches for letter sheets (ANSI/ASME Y14.1)', async () => {
    const { pages } = await read({ sheet: 'letter-2x5-101.6x50.8' });
    expect(pages[0]?.width).toBeCloseTo(8.5 * 25.4, 2);
    expect(pages[0]?.height).toBeCloseTo(11 * 25.4, 2);
  });
});

describe('where the words stand', () => {
  // Reckoned by hand from the sheet's measures: left 7.25, top 15.15, pitch 66 x 38.1, and 2 mm inside the label.
  test.each([
    { startAt: 1, x: 9.25, top: 15.15 },
    { startAt: 3, x: 141.25, top: 15.15 },
    { startAt: 9, x: 141.25, top: 91.35 },
    { startAt: 21, x: 141.25, top: 243.75 },
  ])(
    'the box number of label $startAt begins at $x mm, in the upper half of its label',
    async ({ startAt, x, top }) => {
      const [number] = (await read({ startAt })).pages[0]?.texts ?? [];
      expect(number?.text).toBe('K07');
      expect(Math.abs((number?.x ?? 0) - x)).toBeLessThan(0.1);
      expect(number?.y).toBeGreaterThan(top + 2);
      expect(number?.y).toBeLessThan(top + 19);
      expect(number?.upright).toBe(true);
    },
  );

  test('labels run on to a second sheet after the last place of the first', async () => {
    const { pages } = await read({ labels: boxes(15), startAt: 9 });
    expect(pages).toHaveLength(2);
    expect(pages[1]?.texts.filter(({ text }) => text.startsWith('K')).map(({ text }) => text)).toEqual(['K14', 'K15']);
    expect(pages[1]?.texts[0]?.x).toBeCloseTo(9.25, 1);
  });

  test('every word of a full sheet is inside its own label, 2 mm from its sides', async () => {
    const long = aLabel({
      box: 'Fence-row-12',
      mother: 'mother H01 Ørsted Müller from the lower yard by the mill, line 4',
    });
    const { pages } = await read({ labels: [...boxes(20), long], qr: true });
    const texts = pages[0]?.texts ?? [];
    expect(texts.length).toBeGreaterThan(21 * 5);
    for (const { text, x, y, width, points } of texts) {
      const left = 7.25 + Math.floor((x - 7.25) / 66) * 66;
      const top = 15.15 + Math.floor((y - 15.15) / 38.1) * 38.1;
      const capitals = points * 0.67 * (25.4 / 72);
      expect(x, text).toBeGreaterThanOrEqual(left + 1.99);
      expect(x + width, text).toBeLessThanOrEqual(left + 63.5 - 1.99);
      expect(y - capitals, text).toBeGreaterThanOrEqual(top + 1.99);
      expect(y, text).toBeLessThanOrEqual(top + 38.1 - 2);
    }
  });
});

describe('the words', () => {
  test('say box, batch, mother, hands off with weekday and month, first look and brood look', async () => {
    const words = wordsOf(await read({}));
    for (const word of [
      'K07',
      '26-07',
      'white',
      'mother H03 Anna',
      'HANDS',
      'OFF',
      'to Mon 25 May',
      'look Tue 26 May',
      'brood Thu 4 Jun',
    ])
      expect(words).toContain(word);
  });

  test.each(['Žluťoučký', 'Łódź', 'Ørsted', 'Müller', 'Ğüneş', 'Őrség'])(
    '%s comes out letter for letter',
    async (name) => {
      expect(wordsOf(await read({ labels: [aLabel({ mother: `mother ${name}` })] }))).toContain(name);
    },
  );

  test('letters that the first font lacks come from the second', async () => {
    const words = wordsOf(await read({ labels: [aLabel({ mother: 'mother Мария Άννα' })] }));
    expect(words).toContain('Мария');
    expect(words).toContain('Άννα');
  });

  test('text that looks like PDF, script, link or direction marks stays text', async () => {
    const hostile = ') Tj /JS (app.alert(1)) /URI (http://x) \u202egnp\u0000 %';
    const { pages, activeParts } = await read({ labels: [aLabel({ mother: hostile })] });
    expect(activeParts).toEqual([]);
    const text = pages[0]?.texts.map((one) => one.text).join(' ') ?? '';
    expect(text).toContain('/JS (app.alert(1))');
    expect(text).not.toMatch(/[\p{Cc}\p{Cf}?]/u);
  });

  test('fonts are inside the file', async () => {
    const file = (await bytesOf({})).toString('latin1');
    const described = file.match(/\/Type \/FontDescriptor/g)?.length;
    expect(described).toBe(2);
    expect(file.match(/\/FontFile2 /g)).toHaveLength(2);
    expect(file).not.toContain('/BaseFont /Helvetica');
  });

  test('the same labels give the same bytes', async () => {
    expect((await bytesOf({ qr: true })).equals(await bytesOf({ qr: true }))).toBe(true);
  });
});

/** The code as a camera would see it: quiet zone of 4 modules (ISO/IEC 18004), 4 pixels a module, read by jsqr. */
function readCode({ dark }: ReadCode): string | undefined {
  const [quiet, scale] = [4, 4];
  const side = (dark.length + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (dark[Math.floor(y / scale) - quiet]?.[Math.floor(x / scale) - quiet])
        pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
  return readQr(pixels, side, side)?.data;
}

const finderAt = (code: ReadCode, row: number, column: number): boolean =>
  [0, 6].every((edge) =>
    [0, 1, 2, 3, 4, 5, 6].every(
      (step) => code.dark[row + edge]?.[column + step] && code.dark[row + step]?.[column + edge],
    ),
  );

describe('the square code (ISO/IEC 18004)', () => {
  test('of every label on a sheet is read, and says box, batch and next look in capitals', async () => {
    const { pages } = await read({ labels: boxes(21), qr: true });
    expect(pages[0]?.codes.map(readCode)).toEqual(boxes(21).map(({ box }) => `${box} 26-07 26MAY`));
  });

  test('stands upright: finder patterns in all corners but the lower right, every module as the maker drew it', async () => {
    const { pages } = await read({ qr: true });
    const [code] = pages[0]?.codes ?? [];
    if (!code) throw new Error('no code');
    const last = code.dark.length - 7;
    expect([
      finderAt(code, 0, 0),
      finderAt(code, 0, last),
      finderAt(code, last, 0),
      finderAt(code, last, last),
    ]).toEqual([true, true, true, false]);
    const { modules } = QRCode.create('K07 26-07 26MAY', { errorCorrectionLevel: 'Q' });
    expect(code.dark.flat()).toEqual(Array.from(modules.data, Boolean));
  });

  test.each(['a4-3x7-63.5x38.1', 'a4-2x7-99.1x38.1', 'roll-62', 'letter-2x5-101.6x50.8', 'a4-4x10-48.5x25.4'] as const)(
    'on %s has modules of 0.5 mm and more, and 4 modules of white around, words included',
    async (sheet) => {
      const { pages } = await read({ sheet, qr: true });
      const { labelWidth, left } = labelSheet(sheet);
      const [code] = pages[0]?.codes ?? [];
      if (!code) throw new Error('no code');
      const module = code.width / code.dark.length;
      expect(module).toBeGreaterThanOrEqual(0.4999);
      const quiet = 4 * module - 0.05;
      expect(code.x + code.width + quiet).toBeLessThanOrEqual(left + labelWidth);
      for (const { text, x, y, width, points } of pages[0]?.texts ?? []) {
        const apart =
          x + width <= code.x - quiet || y <= code.y - quiet || y - points * 0.25 >= code.y + code.height + quiet;
        expect(apart, text).toBe(true);
      }
    },
  );

  // 21 modules and a quiet zone of 4 on each side, of 0.5 mm: 14.5 mm, more than these labels have beside their words.
  test.each(['a4-5x13-38.1x21.2', 'a4-4x12-45.7x21.2'] as const)(
    'is refused on %s, with the room it needs, rather than drawn too fine to read',
    async (sheet) => {
      const made = await labelPdf({ ...PAPER, qr: true, labels: [aLabel()], sheet: labelSheet(sheet) });
      expect(made).toEqual({ kind: 'code-does-not-fit', neededMillimetres: 14.5 });
    },
  );
});

const hasPoppler = spawnSync('pdftoppm', ['-v']).error === undefined;

describe.skipIf(!hasPoppler)(
  'drawn by poppler (only where pdftoppm is installed; the tests above need nothing)',
  () => {
    test('the first code of a sheet is read from the picture at 200 dots an inch', async () => {
      const folder = mkdtempSync(join(tmpdir(), 'labels-'));
      try {
        writeFileSync(join(folder, 'labels.pdf'), await bytesOf({ qr: true, pencilLine: true, outline: true }));
        spawnSync('pdftoppm', ['-r', '200', '-gray', '-singlefile', 'labels.pdf', 'page'], { cwd: folder });
        const file = readFileSync(join(folder, 'page.pgm'));
        const [, width, height] = /^P5\s(\d+) (\d+)\s255\s/.exec(file.toString('latin1', 0, 40)) ?? [];
        const [w, h] = [Number(width), Number(height)];
        const grey = file.subarray(file.length - w * h);
        const pixels = new Uint8ClampedArray(w * h * 4);
        for (let i = 0; i < w * h; i += 1) pixels.fill(grey[i] ?? 0, i * 4, i * 4 + 4);
        expect(readQr(pixels, w, h)?.data).toBe('K07 26-07 26MAY');
      } finally {
        rmSync(folder, { recursive: true });
      }
    });
  },
);
