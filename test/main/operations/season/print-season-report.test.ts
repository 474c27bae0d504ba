import { beforeAll, describe, expect, test } from 'vitest';
import { type Reckoner, reckonHere } from '../../../../main/engine/yield/reckon.ts';
import { printSeasonReport } from '../../../../main/operations/season/print-season-report.ts';
import { aBatch } from '../../../builders/batch.ts';
import { aColony } from '../../../builders/colony.ts';
import { through } from '../../../builders/counted-batches.ts';
import { aDesk, fill, mustOk } from '../../../builders/desk.ts';
import { aQueen } from '../../../builders/queen.ts';
import { readPdf } from '../../../builders/read-pdf.ts';
import { refusalOf } from '../../../builders/running-batch.ts';

const NOTHING = {
  given: null,
  taken: null,
  enteredSealing: null,
  sealed: null,
  placed: 0,
  emergenceKnown: 0,
  emerged: 0,
  matingKnown: 0,
  proved: 0,
  laying: 0,
};

/** A season of four batches by two methods; one is practice, one was never counted, one has a lesson. */
function aSeason() {
  const desk = aDesk({ today: '2026-10-01' });
  fill(desk, ({ colonies, batches, tallies, queens, queenFeedback }) => {
    colonies.insert(aColony({ id: 'h03', code: 'H03' }));
    colonies.insert(aColony({ id: 'h12', code: 'H12' }));
    const told = [
      {
        code: '26-01',
        method: 'larva-grafting',
        tally: through(30, 24, 22, 20, 15),
        lesson: 'Feed before, not after.',
      },
      { code: '26-02', method: 'cut-comb-edge', tally: through(20, 10, 9, 8, 7), lesson: null },
      { code: '26-03', method: 'cut-comb-edge', tally: {}, lesson: null },
      { code: '26-04', method: 'larva-grafting', tally: through(50, 1, 1, 1, 1), lesson: null, practice: true },
    ] as const;
    for (const { code, method, lesson, tally, ...rest } of told) {
      const anchorOn = `2026-05-${code.slice(-2)}`;
      batches.insert(
        aBatch({
          id: code,
          code,
          method,
          comb: method === 'cut-comb-edge' ? 'drawn' : null,
          breederId: 'h03',
          builderId: 'h12',
          anchorOn,
          lesson,
          closedOn: lesson ? '2026-07-01' : null,
          ...rest,
        }),
      );
      tallies.put({ batchId: code, ...NOTHING, ...tally });
    }
    queens.insert(aQueen({ id: 'q1', number: '26-001', bornIn: 2026, place: 'given', goneTo: 'Żaneta Ørsted' }));
    queens.insert(aQueen({ id: 'q2', number: '26-002', bornIn: 2026, place: 'in-hive', goneTo: null }));
    queenFeedback.insert({
      id: 'f1',
      queenId: 'q1',
      toldOn: '2026-08-01',
      toldBy: null,
      outcome: 'lays-well',
      note: null,
    });
  });
  return desk;
}

/** As the program's own thread does: the same counts are reckoned once. */
function keeping(reckon: Reckoner): Reckoner {
  const kept = new Map<string, ReturnType<Reckoner>>();
  return ((kind, asked) => {
    const key = JSON.stringify([kind, asked]);
    const before = kept.get(key);
    if (before) return before;
    const answer = reckon(kind, asked);
    kept.set(key, answer);
    return answer;
  }) as Reckoner;
}
const reckon = keeping(reckonHere());

async function paperOf(changes: Partial<Parameters<typeof printSeasonReport>[1]> = {}) {
  const made = mustOk(
    await printSeasonReport({ ...aSeason(), reckon }, { season: 2026, paper: 'a4', large: false, ...changes }),
  );
  return { ...made, read: await readPdf(Buffer.from(made.base64, 'base64')) };
}
const words = ({ read }: Awaited<ReturnType<typeof paperOf>>): string =>
  read.pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' ');

// Weighing takes a while on a busy computer; all tests below use these answers.
beforeAll(async () => {
  await paperOf();
}, 180_000);

describe('the season report', () => {
  test('sums the batches by hand, leaving practice out, and says what is not known', async () => {
    const text = words(await paperOf());
    // By hand: 30 + 20 given, 24 + 10 taken, 22 + 9 sealed and boxed; 20 + 8 emerged; 15 + 7 proved.
    expect(text).toContain('50 larvae were given, 34 cells taken and 31 sealed');
    expect(text).toContain('31 cells were put in boxes; 28 queens emerged, 22 laid, 22 were proved.');
    expect(text).toContain('1 batch was for practice and is left out of all figures.');
    expect(text).toContain('take 68');
    expect(text).toContain('34 of 50');
    expect(text).toContain('Cells given not counted: 26-03.');
    expect(text).toContain('26-01: Feed before, not after.');
  });

  test('has figures by method, builder and breeder, with counts and ranges, and the finding in words', async () => {
    const text = words(await paperOf());
    for (const part of ['By method', 'By builder colony', 'By breeder', '24 of 30', '10 of 20'])
      expect(text).toContain(part);
    expect(text).toMatch(/Take: .*(Larva grafting|Cut-comb edge).* larvae/);
    expect(text).toContain('Only one breeder has figures');
    // Wilson's range of 24 of 30 by hand, z = 1.645 (Wilson 1927, J. Am. Stat. Assoc. 22:209): 0.775 ± 0.118.
    expect(text).toContain('66–89');
  });

  test('is set in the letters of a book, and leaves lines for what is to change', async () => {
    const made = await paperOf();
    const bytes = Buffer.from(made.base64, 'base64').toString('latin1');
    expect(bytes).toMatch(/\/BaseFont \/[A-Z]{6}\+SourceSerif/);
    expect(bytes).not.toMatch(/\/BaseFont \/[A-Z]{6}\+Atkinson/);
    const text = words(made);
    expect(text).toContain('Changes for next year What I shall do otherwise:');
    // Name of the workbook, day, last change and program on each page; the version is the one of package.json.
    const feet = made.read.pages.map(({ texts }) => texts.map((one) => one.text).join(' '));
    for (const foot of feet) expect(foot).toMatch(/, as of .*, change \d+, Ripecell \d+\.\d+\.\d+/);
  });

  test('has figures by month, and every batch on one line of whole months, said in words where it is not seen', async () => {
    const { read } = await paperOf();
    const text = read.pages.flatMap((page) => page.texts.map((one) => one.text)).join(' ');
    expect(text).toContain('By month');
    // All larvae were given in May; by hand 34 of 50 taken, practice left out.
    const at = read.spoken.findIndex(([role, said]) => role === 'TH' && said === 'Month');
    const row = read.spoken.slice(at).findIndex(([, said]) => said === 'May');
    expect(row).toBeGreaterThan(0);
    expect(
      read.spoken
        .slice(at + row, at + row + 4)
        .map(([, said]) => said)
        .join(' '),
    ).toContain('34 of 50');
    const figure = read.spoken.find(([role, said]) => role === 'Figure' && said.startsWith('26-01: larvae given'));
    for (const code of ['26-01', '26-02', '26-03', '26-04']) expect(figure?.[1]).toContain(`${code}: larvae given`);
    // Larvae given on 1 May; the comb hung before, in April; queens lay in June.
    const texts = read.pages[0]?.texts ?? [];
    const places = ['April', 'May', 'June'].map((month) => texts.find((one) => one.text === month)?.x ?? Number.NaN);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    const [april = 0, may = 0, june = 0] = places;
    // 30 and 31 days.
    expect((june - may) / (may - april)).toBeCloseTo(31 / 30, 1);
  });

  test('says where each queen is, and what was heard of her, letters outside Latin-1 included', async () => {
    const text = words(await paperOf());
    expect(text).toContain('26-001 (Żaneta Ørsted)');
    expect(text).toContain('in a hive');
    expect(text).toContain('lays well 1');
  });

  test.each([
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const)(
    'is %s, upright (ISO 216, ANSI/ASME Y14.1), with page x of y and nothing over the margin',
    async (paper, width, height) => {
      for (const large of [false, true]) {
        const { pages, read } = await paperOf({ paper, large });
        expect(read.pages).toHaveLength(pages);
        for (const [index, page] of read.pages.entries()) {
          expect([page.width, page.height]).toEqual([expect.closeTo(width, 2), expect.closeTo(height, 2)]);
          const text = page.texts.map((one) => one.text).join(' ');
          expect(text).toContain(`page ${index + 1} of ${pages}`);
          expect(text).toContain('as of Thursday 1 October 2026');
          for (const one of page.texts) {
            expect(one.x, one.text).toBeGreaterThan(14.9);
            expect(one.x + one.width, one.text).toBeLessThan(width - 14.9);
            expect(one.y, one.text).toBeLessThan(height - 14.9);
          }
        }
      }
    },
  );

  test('large print is 16 pt and more in tables and 13 pt at least at the foot', async () => {
    const { read } = await paperOf({ large: true });
    const sizes = read.pages.flatMap((page) => page.texts.map(({ points }) => points));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(13);
    expect(read.pages[0]?.texts.find(({ text }) => text.includes('34 of 50'))?.points).toBe(16);
  });

  test('holds its fonts, is plain, and is tagged in reading order', async () => {
    const { base64, read } = await paperOf();
    const file = Buffer.from(base64, 'base64').toString('latin1');
    expect(file.match(/\/FontFile2 /g)?.length).toBe(file.match(/\/Type \/FontDescriptor/g)?.length);
    expect(read.activeParts).toEqual([]);
    expect(read.spoken.slice(0, 2)).toEqual([
      ['H1', 'Season 2026'],
      ['P', expect.stringContaining('3 batches')],
    ]);
    const roles = new Set(read.spoken.map(([role]) => role));
    expect(roles).toEqual(new Set(['H1', 'H2', 'P', 'TH', 'TD', 'LBody', 'Figure']));
    expect(read.spoken.some(([, text]) => text.includes('page 1 of'))).toBe(false);
  });
});

test('refuses a season in which nothing was started', async () => {
  expect(refusalOf(await printSeasonReport(aDesk(), { season: 2019, paper: 'a4', large: false }))).toEqual({
    kind: 'season-without-batches',
    field: 'season',
    season: 2019,
  });
});
