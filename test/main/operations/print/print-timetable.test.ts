import { describe, expect, test } from 'vitest';
import { printTimetable } from '../../../../main/operations/print/print-timetable.ts';
import { workbookWords } from '../../../../main/operations/workbook-words.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { expectTidyPages, readPaperFile } from '../../../builders/read-paper-file.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const wish = {
  method: 'larva-grafting',
  comb: null,
  builderType: 'queenless',
  anchorStep: 'give-larvae',
  anchorOn: '2026-05-04',
  variant: 'dates',
  paper: 'a4',
} as const;

type Wish = Parameters<typeof printTimetable>[1];

async function pagesOf(changes: Partial<Wish> = {}) {
  const { base64 } = mustOk(await printTimetable(aDesk(), { ...wish, ...changes }));
  return (await readPdf(Buffer.from(base64, 'base64'))).pages;
}
const textOf = async (changes: Partial<Wish> = {}): Promise<string> =>
  (await pagesOf(changes)).flatMap((page) => page.texts.map(({ text }) => text)).join(' ');

describe('the timetable for the class', () => {
  test('has the day of every step; queens emerge 11 to 12 days after day-old larvae were given', async () => {
    const text = await textOf();
    expect(text).toContain('Larva grafting: timetable');
    expect(text).toContain('Larvae given on Monday 4 May 2026.');
    // Queens emerge 16 d 1 h after laying at 34.5 °C (Chuda-Mickiewicz & Samborski 2015, Acta Sci. Pol. Zootechnica
    // 14(4)); the larva given is 12 to 24 hours old, 3.5 to 4 days from laying: 11 to 12 days on, 15 or 16 May.
    expect(text).toMatch(/(Fri 15|Sat 16) May 1[12] [a-z, ]+ Queens emerge/);
  });

  test('writes days in the order chosen', async () => {
    const desk = aDesk();
    fill(desk, ({ settings }) => settings.put('dateOrder', 'month-first'));
    const { base64 } = mustOk(await printTimetable(desk, wish));
    const { pages } = await readPdf(Buffer.from(base64, 'base64'));
    const text = pages.flatMap((page) => page.texts.map((one) => one.text)).join(' ');
    expect(text).toContain('Larvae given on Monday, May 4, 2026.');
    expect(text).toMatch(/(Fri May 15|Sat May 16) 1[12] [a-z, ]+ Queens emerge/);
  });

  test('without dates keeps the day numbers, and as an exercise keeps neither', async () => {
    const month = /\d (Apr|May|Jun)\b/;
    const numbers = await textOf({ variant: 'day-numbers' });
    expect(numbers).not.toMatch(month);
    expect(numbers).toMatch(/1[12] [a-z, ]+ Queens emerge/);
    const gaps = await textOf({ variant: 'gaps' });
    expect(gaps).not.toMatch(month);
    expect(gaps).not.toMatch(/1[12] [a-z, ]+ Queens emerge/);
    expect(gaps).toContain('Queens emerge');
  });

  test.each([
    ['a4', 297, 210],
    ['letter', 279.4, 215.9],
  ] as const)('on %s lies across and keeps every word inside margins of 12 mm', async (paper, width, height) => {
    const pages = await pagesOf({ paper });
    for (const page of pages) {
      expect([page.width, page.height].map((side) => Math.round(side * 10) / 10)).toEqual([width, height]);
      for (const { text, x, y, width: wide } of page.texts) {
        expect(x, text).toBeGreaterThan(11.9);
        expect(x + wide, text).toBeLessThan(width - 11.9);
        expect(y, text).toBeLessThan(height - 11.9);
      }
    }
  });

  test.each([
    'larva-grafting',
    'larva-grafting-double',
    'cut-comb-edge',
    'comb-strip',
    'flat-comb',
    'cell-punch',
    'caged-laying-plugs',
  ] as const)('of %s has room for every row above the foot, and words and sources on the last page', async (method) => {
    for (const paper of ['a4', 'letter'] as const) {
      const pages = await pagesOf({ method, paper, comb: method === 'cut-comb-edge' ? 'foundation' : null });
      for (const { texts } of pages) {
        const lowest = Math.max(...texts.filter(({ points }) => points === 12).map(({ y }) => y));
        const foot = texts.filter(({ points, y }) => points === 9 && y > 160);
        expect(Math.min(...foot.map(({ y }) => y))).toBeGreaterThan(lowest + 3);
      }
      const said = pages.map(({ texts }) => texts.some(({ text }) => text.startsWith('Sources of the days')));
      expect(said).toEqual([...pages.slice(1).map(() => false), true]);
    }
  });

  test.each(['en', 'de'] as const)(
    'has twelve words of the glossary with their meanings at the back (%s)',
    async (language) => {
      const desk = aDesk();
      fill(desk, ({ settings }) => settings.put('language', language));
      const { glossary, classPapers } = workbookWords(desk);
      for (const large of [false, true]) {
        const { spoken, pages } = await readPaperFile(mustOk(await printTimetable(desk, { ...wish, large })));
        const at = spoken.findIndex(([role]) => role === 'H2');
        expect(spoken[at]?.[1]).toBe(classPapers.glossary.title);
        const back = spoken.slice(at + 3).filter(([role]) => role === 'TH' || role === 'TD');
        const words = back.filter((_, index) => index % 2 === 0).map(([, word]) => word);
        expect(words).toHaveLength(12);
        for (const [index, word] of words.entries())
          expect([word, back[2 * index + 1]?.[1]]).toEqual([
            word,
            glossary.list.find((one) => one.word === word)?.meaning ?? 'not in the glossary',
          ]);
        // The words begin a page of their own.
        const own = pages.filter(({ texts }) => texts.some(({ text }) => text === classPapers.glossary.title));
        expect(own).toHaveLength(1);
        expect(own[0]?.texts.some(({ text }) => /^(Give the larvae|Die Larven geben)$/.test(text))).toBe(false);
      }
    },
  );

  test('says what the bees do on each day, and shows the life of the batch stage by stage', async () => {
    const { spoken } = await readPaperFile(mustOk(await printTimetable(aDesk(), wish)));
    const bees = (step: string) => {
      const at = spoken.findIndex(([role, words]) => role === 'TH' && words === step);
      return spoken[at - 1]?.[1];
    };
    // Open brood until about day 9 from laying, sealed until about day 16 (development table of Winston 1987, from memory).
    expect(bees('Put the comb in the breeder')).toBe(english.handout.bees.egg);
    expect(bees('Count the cells taken')).toBe(english.handout.bees.larva);
    expect(bees('Leave the cells alone')).toBe(english.handout.bees.sealed);
    expect(bees('Put the cells in the boxes')).toBe(english.handout.bees.ready);
    expect(bees('See who has emerged')).toBe(english.handout.bees.virgin);
    expect(bees('First look for eggs')).toBe(english.handout.bees.laying);
    const picture = spoken.find(([role]) => role === 'Figure')?.[1] ?? '';
    expect(picture).toMatch(/larva from day 0 to day 5; sealed from day 5 to day 10; ripe from day 10 to day 1[12]/);
  });

  test('keeps the caution clear of the page number, in German too', async () => {
    const desk = aDesk();
    fill(desk, ({ settings }) => settings.put('language', 'de'));
    const { pages } = await readPaperFile(mustOk(await printTimetable(desk, wish)));
    for (const { texts } of pages) {
      const number = texts.find(({ text }) => /^Seite \d von \d$/.test(text));
      const beside = texts.filter(({ x, y }) => Math.abs(y - (number?.y ?? 0)) < 5 && x < 200);
      for (const { text, x, width } of beside) expect(x + width, text).toBeLessThan((number?.x ?? 0) - 1);
    }
  });

  test.each(['dates', 'day-numbers', 'gaps'] as const)(
    'is read aloud (%s) in the order title, start, picture, table row by row, words, sources',
    async (variant) => {
      // Long enough for two pages; the head of the table is said once.
      const { pages, spoken } = await readPaperFile(mustOk(await printTimetable(aDesk(), { ...wish, variant })));
      expect(pages.length).toBeGreaterThan(1);
      const roles = spoken.map(([role]) => role);
      expect(roles.slice(0, 9)).toEqual(['H1', 'P', 'Figure', 'TH', 'TH', 'TH', 'TH', 'TH', 'TH']);
      expect(roles.at(-1)).toBe('P');
      const cells = spoken.slice(9, roles.indexOf('H2'));
      expect(cells.length % 6).toBe(0);
      for (let row = 0; row < cells.length; row += 6)
        expect(cells.slice(row, row + 6).map(([role]) => role)).toEqual(['TD', 'TD', 'TD', 'TH', 'TD', 'TD']);
      expect(spoken[2]?.[1]).toContain('Hatched: hands off');
      expect(cells.filter(([, words]) => words === 'Queens emerge')).toHaveLength(1);
    },
  );

  test.each(['dates', 'day-numbers', 'gaps'] as const)(
    'in large print (%s) is 13 pt and more, tagged, with every step and the caution',
    async (variant) => {
      for (const paper of ['a4', 'letter'] as const) {
        const large = await readPaperFile(
          mustOk(await printTimetable(aDesk(), { ...wish, variant, paper, large: true })),
        );
        expectTidyPages(large, paper);
        expect(
          Math.min(...large.pages.flatMap(({ texts }) => texts.map(({ points }) => points))),
        ).toBeGreaterThanOrEqual(13);
        expect(large.text).toContain('Queens emerge');
        expect(large.text).toContain('Stings can cause severe allergy');
        expect(/\d (Apr|May|Jun)\b/.test(large.text)).toBe(variant === 'dates');
        expect(large.text.includes('________')).toBe(variant === 'gaps');
      }
    },
  );

  test('asks for the comb where the method needs one', async () => {
    const refused = await printTimetable(aDesk(), { ...wish, method: 'cut-comb-edge' });
    expect(refusalOf(refused)).toEqual({ kind: 'comb-needed', field: 'comb' });
  });
});
