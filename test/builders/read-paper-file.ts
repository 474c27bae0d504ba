import { expect } from 'vitest';
import type { PaperFile } from '../../shared/contract/print.ts';
import { type ReadPdf, readPdf } from './read-pdf.ts';

/** A paper read back, with all its words in one text. */
export async function readPaperFile({ base64, pages }: PaperFile): Promise<ReadPdf & { readonly text: string }> {
  const bytes = Buffer.from(base64, 'base64');
  const read = await readPdf(bytes);
  expect(read.pages).toHaveLength(pages);
  const file = bytes.toString('latin1');
  expect(file.match(/\/FontFile2 /g)?.length).toBe(file.match(/\/Type \/FontDescriptor/g)?.length);
  return { ...read, text: read.pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' ') };
}

/** Millimetres: ISO 216 A4, ANSI/ASME Y14.1 letter. */
const SIDES = { a4: [210, 297], letter: [215.9, 279.4] } as const;

/** Every page has the size asked for, says which of how many it is, and keeps its words 15 mm from the edges. */
export function expectTidyPages({ pages, spoken }: ReadPdf, paper: 'a4' | 'letter'): void {
  const [width, height] = SIDES[paper];
  for (const [index, page] of pages.entries()) {
    expect([page.width, page.height]).toEqual([expect.closeTo(width, 2), expect.closeTo(height, 2)]);
    expect(page.texts.map(({ text }) => text).join(' ')).toContain(`page ${index + 1} of ${pages.length}`);
    for (const { text, x, y, width: room, marked } of page.texts) {
      expect(marked, `${text} is neither read aloud nor an ornament`).not.toBe('none');
      expect(x, text).toBeGreaterThan(14.9);
      expect(x + room, text).toBeLessThan(width - 14.9);
      expect(y, text).toBeLessThan(height - 14.9);
    }
  }
  expect(spoken[0]?.[0]).toBe('H1');
}
