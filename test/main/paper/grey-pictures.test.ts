// The papers of the demo against kept pictures in grey. RIPECELL_RETAKE=1 takes them anew; look at what changed.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildDemo, DEMO_DAY } from '../../../main/demo/build-demo.ts';
import type { Reckoner, YieldQuestions } from '../../../main/engine/yield/reckon.ts';
import { printHivePage } from '../../../main/operations/hives/print-hive-page.ts';
import { printInspectorPages } from '../../../main/operations/hives/print-inspector-pages.ts';
import type { Desk } from '../../../main/operations/operation.ts';
import { printKeyCard } from '../../../main/operations/print/print-key-card.ts';
import { printLabels } from '../../../main/operations/print/print-labels.ts';
import { printTimetable } from '../../../main/operations/print/print-timetable.ts';
import { printYardSheet } from '../../../main/operations/print/print-yard-sheet.ts';
import { printSeasonReport } from '../../../main/operations/season/print-season-report.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import type { Result } from '../../../shared/kernel/result.ts';
import { aDesk, mustOk } from '../../builders/desk.ts';
import { drawGrey, type GreyPicture, greatestDifference, pngOf, readPng } from '../../builders/grey-picture.ts';

const KEPT = join(import.meta.dirname, '../../golden/papers');
const RETAKE = process.env.RIPECELL_RETAKE === '1';
/** Enough to read a heading and to see where every word stands. */
const DOTS_PER_INCH = 64;
/**
 * Of 15. On one machine a paper is drawn the same to the last dot; another processor may smooth an edge by a step. A
 * word that moved by a millimetre changes its window by two and more.
 */
const TOLERANCE = 1;

type Made = Promise<Result<{ readonly base64: string; readonly pages: number }, Refusal>>;
const A4 = { paper: 'a4', large: false } as const;
const batchOf = (desk: Desk, code: string) =>
  desk.workbook.tables.batches.all().find((batch) => batch.code === code)?.id ?? null;
const SHEET = { boxIds: null, startAt: 1, printer: null, pencilLine: true, outline: true } as const;
const METHOD = { method: 'cut-comb-edge', comb: 'drawn', builderType: 'queenless', anchorStep: 'give-larvae' } as const;

const PAPERS: readonly (readonly [name: string, pages: number, print: (desk: Desk) => Made])[] = [
  [
    'labels',
    1,
    (desk) => printLabels(desk, { ...SHEET, batchId: batchOf(desk, '26-01'), sheet: 'a4-3x7-63.5x38.1', qr: true }),
  ],
  ['yard-sheet', 2, (desk) => printYardSheet(desk, { ...A4, yardId: null, walkOn: null, week: true, look: true })],
  [
    'yard-sheet-two-columns',
    1,
    (desk) => printYardSheet(desk, { ...A4, yardId: null, walkOn: null, columns: 2, look: true }),
  ],
  [
    'timetable',
    1,
    (desk) => printTimetable(desk, { ...METHOD, anchorOn: '2026-05-21', variant: 'dates', paper: 'a4' }),
  ],
  ['season-report', 2, (desk) => printSeasonReport(desk, { ...A4, season: 2025 })],
  ['hive-page', 1, (desk) => printHivePage(desk, { ...A4, colonyId: 'demo-hive-H03' })],
  ['inspector-pages', 1, (desk) => printInspectorPages(desk, { ...A4, yardId: null, year: 2025 })],
  ['key-card', 1, (desk) => printKeyCard(desk, A4)],
];

/**
 * Plain shares stand in for weighed ones, which take half a minute on a busy machine: the picture is about places, and the
 * figures have tests of their own.
 */
const plainShares = ((kind: string, { groups }: YieldQuestions['weigh']['ask']) => {
  if (kind !== 'weigh') throw new Error(`${kind} is not asked for a paper`);
  const shares = groups.map((batches) => {
    const sum = (part: 'successes' | 'of') => batches.reduce((total, batch) => total + batch[part], 0);
    const mean = sum('of') === 0 ? 0.5 : sum('successes') / sum('of');
    return { mean, lower: Math.max(0, mean - 0.1), upper: Math.min(1, mean + 0.1), probabilityBest: 0 };
  });
  return Promise.resolve({ rates: { groups: shares, probabilityBetter: [] }, lead: null });
}) as unknown as Reckoner;

let demo: Desk;
beforeAll(() => {
  demo = { ...aDesk({ today: isoOfDay(DEMO_DAY) }), reckon: plainShares };
  buildDemo(demo);
}, 120_000);

function expectAsKept(name: string, taken: GreyPicture): void {
  const file = join(KEPT, `${name}.png`);
  if (RETAKE || !existsSync(file)) {
    mkdirSync(KEPT, { recursive: true });
    writeFileSync(file, pngOf(taken));
    if (!RETAKE) expect.fail(`${file} was missing and has been taken: look at it and run again.`);
  }
  const difference = greatestDifference(readPng(readFileSync(file)), taken);
  const seen = join(tmpdir(), `ripecell-${name}.png`);
  if (difference > TOLERANCE) writeFileSync(seen, pngOf(taken));
  expect(difference, `${name} differs from what was kept; as it is now: ${seen}`).toBeLessThanOrEqual(TOLERANCE);
}

test.each(PAPERS)(
  'the demo’s %s looks as it was kept',
  async (name, shown, print) => {
    const { base64, pages } = mustOk(await print(demo));
    expect(pages).toBeGreaterThanOrEqual(shown);
    for (let page = 1; page <= shown; page += 1) {
      const picture = await drawGrey(Buffer.from(base64, 'base64'), page, DOTS_PER_INCH);
      expectAsKept(shown === 1 ? name : `${name}-${page}`, picture);
    }
  },
  120_000,
);

describe('the comparison', () => {
  const sheet = async (): Promise<GreyPicture> => {
    const { base64 } = mustOk(
      await printYardSheet(demo, { ...A4, yardId: null, walkOn: null, week: false, look: true }),
    );
    return drawGrey(Buffer.from(base64, 'base64'), 1, DOTS_PER_INCH);
  };
  /** The dots of a rectangle, given in millimetres, drawn one millimetre further down or to the right. */
  const shifted = (picture: GreyPicture, [left, top, right, bottom]: readonly number[], dx: number, dy: number) => {
    const at = (millimetres = 0) => Math.round((millimetres * DOTS_PER_INCH) / 25.4);
    const dots = picture.dots.slice();
    for (let y = at(top); y < at(bottom); y += 1)
      for (let x = at(left); x < at(right); x += 1)
        dots[y * picture.width + x] = picture.dots[(y - at(dy)) * picture.width + x - at(dx)] ?? 15;
    return { ...picture, dots };
  };

  test('is 0 for the same paper, drawn and kept', async () => {
    const picture = await sheet();
    expect(greatestDifference(picture, readPng(pngOf(picture)))).toBe(0);
    expect(greatestDifference(picture, await sheet())).toBe(0);
  });

  test('tells a word, a small line at the foot and a thin rule that moved by a millimetre', async () => {
    const picture = await sheet();
    // The code of the first row, the words of its keys, the foot, and the rule under the first row (yard-sheet-pdf.ts).
    for (const [what, place, dx, dy] of [
      ['code', [17, 51, 38, 60], 1, 0],
      ['code', [17, 51, 38, 60], 0, 1],
      ['letters to ring', [94, 73, 156, 82], 1, 0],
      ['foot', [12, 281, 120, 287], 0, 1],
      ['rule', [12, 60, 198, 62.5], 0, 1],
    ] as const)
      expect(greatestDifference(picture, shifted(picture, place, dx, dy)), `${what} ${dx} ${dy}`).toBeGreaterThan(
        TOLERANCE,
      );
  });
});
