import { describe, expect, test } from 'vitest';
import { recordLook } from '../../../../main/operations/boxes/record-look.ts';
import { getHiveLookSheet } from '../../../../main/operations/hives/get-hive-look-sheet.ts';
import { printYardSheet } from '../../../../main/operations/print/print-yard-sheet.ts';
import { moveQueen } from '../../../../main/operations/queens/move-queen.ts';
import { english } from '../../../../shared/text/english/english.ts';
import { aColony } from '../../../builders/colony.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aBox } from '../../../builders/mating-box.ts';
import { aQueen } from '../../../builders/queen.ts';
import { type ReadPage, type ReadText, readPdf } from '../../../builders/read-pdf.ts';
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

/** The letters to ring, one by one; the reader joins those that stand close. */
const lettersOf = (texts: readonly ReadText[]) =>
  texts
    .filter(({ text }) => /^[A-Z]( [A-Z])*$/.test(text))
    .flatMap((one) => one.text.split(' ').map((letter) => ({ ...one, text: letter })));
const countOf = (letter: string, pages: readonly ReadPage[]) =>
  lettersOf(pages.flatMap(({ texts }) => texts)).filter(({ text }) => text === letter).length;

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
    const pages = await pagesOf(desk, wish);
    // Ten boxes, four of them free and without letters, and four blank lines.
    expect(countOf('Y', pages)).toBe(10);
    expect(countOf('L', pages)).toBe(0);
    const words = pages.flatMap((page) => page.texts.map(({ text }) => text));
    expect(words.some((word) => word.includes('Y laying, B proved'))).toBe(true);
  });

  test('says which boxes and hives stay shut, and gives them nothing to ring', async () => {
    // Mating flights: boxes with virgins stay shut until the first look of the batch's timetable.
    const pages = await pagesOf(onDay(aDeskWithBoxes(), '2026-05-20'), wish);
    const words = pages.flatMap((page) => page.texts.map(({ text }) => text));
    expect(words.some((word) => /^LEAVE ALONE: .*K01–K06 to [A-Z][a-z]{2} \d+ May/.test(word))).toBe(true);
    expect(words.filter((word) => word.startsWith('HANDS OFF to '))).toHaveLength(6);
    // Four boxes are free; only the four blank lines have letters.
    expect(countOf('L', pages)).toBe(4);
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
    const { base64 } = mustOk(await printYardSheet(onDay(aDeskWithBoxes(), '2026-05-20'), wish));
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
    expect(countOf('L', pages)).toBeGreaterThan(0);
    expect(spoken.slice(3).some(([, words]) => /^L\b/.test(words))).toBe(false);
  });

  test('marks letters to ring, words before lines and the foot as ornaments, and all else as parts that are read', async () => {
    const pages = await pagesOf(aDeskWithBoxes(), wish);
    const texts = pages.flatMap((page) => page.texts);
    const marks = (wanted: RegExp) =>
      new Set(texts.filter(({ text }) => wanted.test(text)).map(({ marked }) => marked));
    const letters = lettersOf(texts);
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
    expect(lettersOf(texts).filter(({ y }) => Math.abs(y - (hive?.y ?? 0)) < 5)).toEqual([]);
    expect(countOf('L', pages)).toBeGreaterThan(0);
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

  const codes = (texts: readonly ReadText[]) => texts.filter(({ text }) => /^K\d\d$/.test(text));

  test.each([
    ['a4', 210, 30],
    ['letter', 215.9, 28],
  ] as const)(
    'in two columns on %s goes down the left one, then the right one, with letters and lines under each box',
    async (paper, width, perPage) => {
      const desk = aDeskWithBoxes();
      const boxes = Array.from({ length: 25 }, (_, index) => ({
        ...aBox(),
        id: `more-${index}`,
        code: `K${index + 11}`,
      }));
      fill(desk, (tables) => {
        for (const [index, box] of boxes.entries()) tables.boxes.insert({ ...box, walkOrder: 100 + index });
      });
      const one = await pagesOf(desk, { ...wish, paper });
      const pages = await pagesOf(desk, { ...wish, paper, columns: 2 });
      // 35 boxes and four blank lines: 20 (18 on Letter) to a page with one column.
      expect(one).toHaveLength(paper === 'a4' ? 2 : 3);
      expect(pages).toHaveLength(2);
      const first = codes(pages[0]?.texts ?? []);
      expect(first.map(({ text }) => text)).toEqual(
        Array.from({ length: perPage }, (_, index) => `K${String(index + 1).padStart(2, '0')}`),
      );
      const left = first.filter(({ x }) => x < width / 2);
      expect(left.map(({ text }) => text)).toEqual(first.slice(0, perPage / 2).map(({ text }) => text));
      for (const column of [left, first.slice(perPage / 2)]) {
        expect(column.map(({ y }) => y)).toEqual(column.map(({ y }) => y).toSorted((a, b) => a - b));
        expect(new Set(column.map(({ x }) => Math.round(x))).size).toBe(1);
      }
      // The gutter stays clear, so that the sheet can be folded there.
      const rows = (pages[0]?.texts ?? []).filter(({ y }) => y > 50 && y < (paper === 'a4' ? 275 : 255));
      for (const { text, x, width: wide } of rows) {
        if (x < width / 2) expect(x + wide, text).toBeLessThan(width / 2 - 3.9);
        else expect(x, text).toBeGreaterThan(width / 2 + 3.9);
      }
      // A box to look into has its letters below its code, before the next box.
      const k01 = first[0];
      const letter = lettersOf(rows).find(({ text, x }) => text === 'L' && x < width / 2);
      expect(letter?.y).toBeGreaterThan(k01?.y ?? Number.NaN);
      expect(letter?.y).toBeLessThan(first[1]?.y ?? Number.NaN);
    },
  );

  test('in large print sets the words in 18 pt in one column, whatever is asked, and nothing under 13 pt', async () => {
    const desk = aDeskWithBoxes();
    const pages = await pagesOf(desk, { ...wish, large: true, columns: 2, week: true });
    const texts = pages.flatMap((page) => page.texts);
    expect(new Set(codes(texts).map(({ x }) => Math.round(x))).size).toBe(1);
    const doing = texts.filter(({ text }) => text === english.yardSheet.doing.cell);
    expect(doing.map(({ points }) => points)).toEqual(new Array(6).fill(18));
    expect(new Set(lettersOf(texts).map(({ points }) => points))).toEqual(new Set([18]));
    expect(Math.min(...texts.map(({ points }) => points))).toBeGreaterThanOrEqual(13);
  });

  test('for hives has every hive of the yard as looks at hives are typed, with what was seen last and no letters', async () => {
    const desk = onDay(aDeskWithBatch(), '2026-05-08');
    fill(desk, ({ yards, colonies, hiveLooks }) => {
      yards.insert(aYard({ id: 'hill', name: 'Hill' }));
      colonies.insert(aColony({ id: 'h99', code: 'H99', name: 'Ada', yardId: 'hill', place: 'gate' }));
      colonies.insert(aColony({ id: 'h98', code: 'H98', yardId: 'hill', endedOn: '2026-05-01' }));
      const look = { colonyId: 'h99', strength: 4, food: 3 };
      hiveLooks.insert({ ...look, id: 'l1', lookedOn: '2026-05-02', note: 'Calm, much pollen' });
      hiveLooks.insert({ ...look, id: 'l2', lookedOn: '2026-05-08', note: 'The look of this very day' });
    });
    const typed = getHiveLookSheet(desk, { yardId: null, sheetDay: '2026-05-08' }).rows.map(({ code }) => code);
    const { base64 } = mustOk(await printYardSheet(desk, { ...wish, lines: 'hives' }));
    const { pages, spoken } = await readPdf(Buffer.from(base64, 'base64'));
    const said = spoken.slice(spoken.findIndex(([role]) => role === 'TH') + 2);
    expect(said.filter(([role]) => role === 'TH').map(([, words]) => words)).toEqual(typed);
    expect(typed).toContain('H99');
    expect(said[said.findIndex(([, words]) => words === 'H99') + 1]?.[1]).toBe(
      'Ada, Hill, gate Sat 2 May: Calm, much pollen',
    );
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    expect(countOf('L', pages)).toBe(0);
    expect(texts).toContain(english.yardSheet.scale);
    expect(texts).toContain(english.yardSheet.heads.seen);
    const ofHill = await wordsOf(desk, { ...wish, lines: 'hives', yardId: 'hill' });
    expect(ofHill.filter((word) => /^H\d\d$/.test(word))).toEqual(['H99']);
    expect(ofHill).toContain('Ada, gate');
  });

  test('for hives says which must stay shut and gives them nothing to tick or fill in', async () => {
    const desk = aDeskWithQueens();
    const to = { place: 'in-hive', colonyId: 'colony-1', goneTo: null, price: null, note: null } as const;
    mustOk(moveQueen(desk, { id: 'm', queenId: 'queen-1', movedOn: '2026-06-01', way: 'candy-cage', ...to }));
    expect(await wordsOf(desk, { ...wish, lines: 'hives' })).toContain('HANDS OFF to Wed 3 Jun');
    expect(await wordsOf(onDay(desk, '2026-06-04'), { ...wish, lines: 'hives' })).not.toContain(
      'HANDS OFF to Wed 3 Jun',
    );
  });

  test('of blank lines is one page for any yard and day, with the letters of the evening on every line', async () => {
    for (const [paper, columns, lines] of [
      ['a4', 1, 20],
      ['a4', 2, 30],
      ['letter', 1, 18],
      ['letter', 2, 28],
    ] as const) {
      const pages = await pagesOf(aDeskWithBoxes(), { ...wish, paper, columns, lines: 'blank', week: true });
      expect(pages).toHaveLength(1);
      const words = pages.flatMap((page) => page.texts.map(({ text }) => text));
      expect(countOf('L', pages)).toBe(lines);
      expect(words.filter((word) => /K\d|14 May|Found/.test(word))).toEqual(['Memory, as of Thursday 14 May 2026']);
      for (const blank of ['yard', 'date', 'weather', 'who', 'LEAVE ALONE:']) expect(words).toContain(blank);
    }
  });

  test('with squared backs has one after each page of lines, without a word but the foot, and none after the week', async () => {
    const desk = onDay(aDeskWithBoxes(), '2026-05-20');
    const pages = await pagesOf(desk, { ...wish, large: true, squaredBack: true, week: true });
    const plain = await pagesOf(desk, { ...wish, large: true, week: true });
    const walk = plain.filter(({ texts }) => texts.some(({ text }) => text.startsWith('LEAVE ALONE'))).length;
    expect(walk).toBeGreaterThan(1);
    expect(pages).toHaveLength(plain.length + walk);
    for (let back = 1; back < 2 * walk; back += 2)
      expect(pages[back]?.texts.map(({ text }) => text)).toEqual([
        expect.stringContaining('as of'),
        `page ${back + 1} of ${pages.length}`,
      ]);
  });

  test('without any box is a blank sheet to fill in by hand', async () => {
    const pages = await pagesOf(aDesk(), wish);
    expect(pages[0]?.texts.map(({ text }) => text)).toContain('Nothing must be left alone today.');
    expect(countOf('L', pages)).toBe(4);
  });
});
