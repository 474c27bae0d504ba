import { describe, expect, test } from 'vitest';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { printYardSheet } from '../../../../main/operations/print/print-yard-sheet.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { aDeskWithBatch, aDeskWithBoxes, onDay } from '../../../builders/running-batch.ts';
import { aYard } from '../../../builders/yard.ts';

function aDeskWithQueens() {
  const desk = aDesk({ today: '2026-06-01' });
  fill(desk, ({ colonies, queens }) => {
    colonies.insert(aColony());
    queens.insert(aQueen({ number: '25-001', bornIn: 2025, place: 'caged' }));
  });
  return desk;
}

const wish = { yardId: null, walkOn: null, paper: 'a4', large: false } as const;

async function pagesOf(...asked: Parameters<typeof printYardSheet>) {
  const { base64 } = mustOk(await printYardSheet(...asked));
  return (await readPdf(Buffer.from(base64, 'base64'))).pages;
}
const wordsOf = async (...asked: Parameters<typeof printYardSheet>): Promise<readonly string[]> =>
  (await pagesOf(...asked)).flatMap((page) => page.texts.map(({ text }) => text));

describe('the yard sheet', () => {
  test('has one line a box in walking order, then blank ones for what is found by chance', async () => {
    const words = await wordsOf(aDeskWithBoxes(), wish);
    expect(words.filter((word) => /^K\d\d$/.test(word))).toEqual(
      Array.from({ length: 10 }, (_, index) => `K${String(index + 1).padStart(2, '0')}`),
    );
    expect(words).toContain('Found by chance');
    expect(words).toContain('page 1 of 1');
    expect(words).toContain('Thursday 14 May 2026');
  });

  test('writes days in the order chosen, months in letters beside a box', async () => {
    const desk = onDay(aDeskWithBoxes(), '2026-05-20');
    fill(desk, ({ settings }) => settings.put('dateOrder', 'year-first'));
    const words = await wordsOf(desk, wish);
    expect(words).toContain('Wednesday 2026-05-20');
    expect(words.some((word) => /^HANDS OFF to [A-Z][a-z]{2} May \d+$/.test(word))).toBe(true);
  });

  test('has the letters of the evening to ring, as the person has them', async () => {
    const desk = aDeskWithBoxes();
    fill(desk, ({ settings }) => settings.put('resultLetters', { laying: 'Y' }));
    const words = await wordsOf(desk, wish);
    // Ten boxes, four of them free and without letters, and four blank lines.
    expect(words.filter((word) => word === 'Y')).toHaveLength(10);
    expect(words).not.toContain('L');
    expect(words.some((word) => word.includes('Y laying, B proved'))).toBe(true);
  });

  test('says which boxes and hives stay shut, and gives them nothing to ring', async () => {
    // Mating flights: boxes with virgins stay shut until the first look of the batch's timetable.
    const words = await wordsOf(onDay(aDeskWithBoxes(), '2026-05-20'), wish);
    expect(words.some((word) => /^LEAVE ALONE: .*K01–K06 to [A-Z][a-z]{2} \d+ May/.test(word))).toBe(true);
    expect(words.filter((word) => word.startsWith('HANDS OFF to '))).toHaveLength(6);
    // Four boxes are free; only the four blank lines have letters.
    expect(words.filter((word) => word === 'L')).toHaveLength(4);
  });

  // A candy cage is looked at on day 3 and left alone until then (Büchler et al. 2013, 2.3.4; common practice, no source).
  test('names a hive with a queen just brought in among what is left alone', async () => {
    const desk = aDeskWithQueens();
    const to = { place: 'in-hive', colonyId: 'colony-1', goneTo: null, price: null, note: null } as const;
    mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2026-06-01', way: 'candy-cage', ...to }));
    expect(await wordsOf(desk, wish)).toContainEqual(expect.stringMatching(/^LEAVE ALONE: .*H01 to Wed 3 Jun/));
    const later = await wordsOf(onDay(desk, '2026-06-04'), wish);
    expect(later.filter((word) => word.includes('H01'))).toEqual([]);
  });

  test('for another day is made for that day, and says when it was made', async () => {
    // Mating flights begin with the emergence days: on 14 May nothing is shut, on 20 May all boxes with virgins are.
    const words = await wordsOf(aDeskWithBoxes(), { ...wish, walkOn: '2026-05-20' });
    expect(words).toContain('Wednesday 20 May 2026');
    expect(words.some((word) => word.includes('Thursday 14 May 2026'))).toBe(true);
    expect(words.filter((word) => word.startsWith('HANDS OFF to '))).toHaveLength(6);
  });

  test('carries what was seen last, in the words of the evening\u2019s typing', async () => {
    const desk = onDay(aDeskWithBoxes(), '2026-05-30');
    const look = {
      id: 'look-1',
      boxId: 'box-1',
      lookedOn: '2026-05-30',
      result: 'laying',
      strength: null,
      food: null,
      note: null,
      queen: null,
    } as const;
    mustOk(recordLook(desk, look));
    const words = await wordsOf(desk, wish);
    expect(words.some((word) => word.includes('laying, Sat 30 May'))).toBe(true);
    expect(words.some((word) => word.startsWith('look for sealed brood'))).toBe(true);
  });

  test.each([
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const)('on %s keeps every word inside the page margins of 12 mm', async (paper, width, height) => {
    for (const page of await pagesOf(aDeskWithBoxes(), { ...wish, paper, large: true })) {
      expect([page.width, page.height].map((side) => Math.round(side * 10) / 10)).toEqual([width, height]);
      for (const { text, x, y, width: wide } of page.texts) {
        expect(x, text).toBeGreaterThan(11.9);
        expect(x + wide, text).toBeLessThan(width - 11.9);
        expect(y, text).toBeLessThan(height - 11.9);
      }
    }
  });

  test('is read aloud as title, what is shut, what the letters mean, then row by row', async () => {
    const { base64 } = mustOk(await printYardSheet(onDay(aDeskWithBoxes(), '2026-05-20'), { ...wish, large: true }));
    const { pages, spoken } = await readPdf(Buffer.from(base64, 'base64'));
    expect(spoken.slice(0, 5).map(([role]) => role)).toEqual(['H1', 'P', 'P', 'TH', 'TH']);
    expect(spoken[1]?.[1]).toMatch(/^LEAVE ALONE/);
    expect(spoken[2]?.[1]).toMatch(/^Letters/);
    const rows = spoken.slice(5);
    expect(rows.filter(([role, words]) => role === 'TH' && words.startsWith('K')).map(([, words]) => words)).toEqual(
      Array.from({ length: 10 }, (_, index) => `K${String(index + 1).padStart(2, '0')}`),
    );
    expect(rows[rows.findIndex(([, words]) => words === 'K01') + 1]?.[1]).toMatch(/^HANDS OFF to/);
    // Letters to ring and lines to write on are on the paper and are not read aloud.
    expect(pages.flatMap(({ texts }) => texts).some(({ text }) => /^L\b/.test(text))).toBe(true);
    expect(spoken.slice(3).some(([, words]) => /^L\b/.test(words))).toBe(false);
  });

  test('marks letters to ring, words before lines and the foot as ornaments, and all else as parts that are read', async () => {
    const pages = await pagesOf(aDeskWithBoxes(), wish);
    const texts = pages.flatMap((page) => page.texts);
    const marks = (wanted: RegExp) =>
      new Set(texts.filter(({ text }) => wanted.test(text)).map(({ marked }) => marked));
    const letters = texts.filter(({ text }) => /^[A-Z]$/.test(text));
    // Six boxes to look into and four blank lines, each with every letter.
    expect(letters).toHaveLength(10 * new Set(letters.map(({ text }) => text)).size);
    expect(letters.filter(({ text }) => text === 'L')).toHaveLength(10);
    expect(new Set(letters.map(({ marked }) => marked))).toEqual(new Set(['ornament']));
    for (const ornament of [/^weather$/, /^who$/, /^Found by chance$/, /^page 1 of 1$/])
      expect(marks(ornament), String(ornament)).toEqual(new Set(['ornament']));
    for (const part of [
      /^Yard sheet/,
      new RegExp(`^${english.yardSheet.nothingShut}`),
      /^Letters:/,
      /^K\d\d$/,
      /^free$/,
    ])
      expect(marks(part), String(part)).toEqual(new Set(['part']));
    expect(texts.filter(({ marked }) => marked === 'none')).toEqual([]);
  });

  test('has a line for each hive with a job, with its batch, before the boxes and without letters to ring', async () => {
    // Larvae were given on 4 May; own cells of the builder are looked for on the fourth day; what was
    // not marked before is late.
    const { base64 } = mustOk(await printYardSheet(onDay(aDeskWithBatch(), '2026-05-08'), wish));
    const { pages, spoken } = await readPdf(Buffer.from(base64, 'base64'));
    const rows = spoken.slice(5);
    expect(rows.slice(0, 4)).toEqual([
      ['TH', 'H03'],
      ['TD', 'Begin feeding, Put the comb in the breeder 26-01'],
      ['TH', 'H12'],
      ['TD', 'Look for the builder’s own cells, 3 more on Today 26-01'],
    ]);
    const texts = pages[0]?.texts ?? [];
    const hive = texts.find(({ text }) => text === 'H12');
    expect(texts.filter(({ text, y }) => text === 'L' && Math.abs(y - (hive?.y ?? 0)) < 5)).toEqual([]);
    expect(texts.filter(({ text }) => text === 'L').length).toBeGreaterThan(0);
  });

  test('of one yard has the hives of that yard only', async () => {
    const desk = onDay(aDeskWithBatch(), '2026-05-08');
    fill(desk, ({ yards, colonies }) => {
      yards.insert(aYard({ id: 'hill', name: 'Hill' }));
      const builder = colonies.all().find(({ code }) => code === 'H12');
      if (builder) colonies.update({ ...builder, yardId: 'hill' });
    });
    const { base64 } = mustOk(await printYardSheet(desk, { ...wish, yardId: 'hill' }));
    const { spoken } = await readPdf(Buffer.from(base64, 'base64'));
    expect(spoken.filter(([role, words]) => role === 'TH' && /^H\d/.test(words)).map(([, words]) => words)).toEqual([
      'H12',
    ]);
  });

  test('has the week ahead on a page of its own: seven days, jobs with batch and place, and what stays shut', async () => {
    const desk = onDay(aDeskWithBoxes(), '2026-05-20');
    const { base64, pages } = mustOk(await printYardSheet(desk, { ...wish, week: true }));
    const read = await readPdf(Buffer.from(base64, 'base64'));
    expect(pages).toBe(2);
    const week = read.spoken.slice(read.spoken.findIndex(([role]) => role === 'H2'));
    expect(week[0]?.[1]).toContain('The week ahead');
    const days = week.slice(4).filter(([role]) => role === 'TH');
    expect(days.map(([, words]) => words)).toEqual([
      'Wed 20 May',
      'Thu 21 May',
      'Fri 22 May',
      'Sat 23 May',
      'Sun 24 May',
      'Mon 25 May',
      'Tue 26 May',
    ]);
    const cells = week.slice(4).filter(([role]) => role === 'TD');
    expect(cells[1]?.[1]).toMatch(/^K01–K06 to /);
    expect(cells.filter((_, index) => index % 2 === 0).map(([, words]) => words)).toEqual([
      'See who has emerged, 26-01: K01–K06',
      ...new Array<string>(6).fill('no job'),
    ]);
  });

  test('without any box is a blank sheet to fill in by hand', async () => {
    const words = await wordsOf(aDesk(), wish);
    expect(words).toContain('Nothing must be left alone today.');
    expect(words.filter((word) => word === 'L')).toHaveLength(4);
  });
});
