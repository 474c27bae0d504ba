// The season comparison of twenty seasons, from the kept sums: it must stay far below reading every cell.
import Database from 'better-sqlite3';
import type { Desk } from '../../main/operations/operation.ts';
import { compareSeason } from '../../main/operations/season/compare-season.ts';
import type { Tables } from '../../main/workbook/workbook.ts';
import { COMPARE_FACTORS, type CompareFactor } from '../../shared/contract/season.ts';
import type { BoxType } from '../../shared/model/method.ts';
import { aBatch } from '../builders/batch.ts';
import { countingReads } from '../builders/counting-reads.ts';
import { aDesk, fill } from '../builders/desk.ts';
import type { Goal } from './goal.ts';

const FIRST_SEASON = 2007;
const SEASONS = 20;
const BATCHES = 60;
const CELLS = 40;
const ROUNDS = 15;
const HIVES = 10;
const METHODS = ['larva-grafting', 'cut-comb-edge', 'cell-punch', 'comb-strip'] as const;
const BOX_TYPES: readonly BoxType[] = ['mini', 'half-frame'];
const SUMS = {
  ...{ given: 40, taken: 30, enteredSealing: 30, sealed: 28, placed: 28 },
  ...{ emergenceKnown: 28, emerged: 25, matingKnown: 25, proved: 19, laying: 20 },
};
const MOST_TIMES = 0.35;
const MOST_TIMES_RECOUNT = 1.15;
const MOST_ROWS = 1000;

export function goals(): readonly Goal[] {
  const desk = filledDesk();
  const cells = filledCells();
  const scan = cells.prepare('SELECT sum(taken), sum(sealed), sum(emerged), sum(proved) FROM cell');
  const ask = (factor: CompareFactor, season: number | null = null, on = desk, and: CompareFactor | null = null) =>
    compareSeason(on, { factor, and, season, leaveOutPractice: true });
  if (ask('method').rows.length !== METHODS.length) throw new Error('the comparison does not see all methods');
  for (const factor of COMPARE_FACTORS) ask(factor);
  /** Work, how often it is repeated to be long enough for the clock, and what comes before it without being timed. */
  const times = (repeats: number, work: () => unknown, before = () => {}, rounds = ROUNDS) => {
    const ratios = Array.from({ length: rounds + 1 }, () => {
      const bare = cpu(() => repeat(() => scan.get(), 20)) / 20;
      before();
      return cpu(() => repeat(work, repeats)) / repeats / bare;
    }).slice(1);
    return Math.round(1000 * median(ratios)) / 1000;
  };
  const saved = () => fill(desk, ({ tallies }) => tallies.put({ batchId: `${FIRST_SEASON}-1`, ...SUMS }));
  return [
    ...COMPARE_FACTORS.map((factor) =>
      atMost(
        `season-all-${factor}`,
        `comparing 20 seasons of 60 batches by ${factor}`,
        MOST_TIMES,
        times(20, () => ask(factor)),
      ),
    ),
    atMost(
      'season-one',
      'comparing one season of them',
      MOST_TIMES,
      times(20, () => ask('method', 2020)),
    ),
    atMost(
      'season-saved',
      'comparing all of them right after a save in one',
      MOST_TIMES,
      times(1, () => ask('method'), saved),
    ),
    atMost(
      'season-recount',
      'adding all twenty seasons up anew from the tallies of their batches, as the first look after opening does',
      MOST_TIMES_RECOUNT,
      times(
        1,
        () => ask('method'),
        () => fill(desk, everySeasonTouched),
        4 * ROUNDS,
      ),
    ),
    mostRows(desk, ask),
  ];
}

/** The rows the greediest question reads, by one factor or any two: of the kept sums, and of everything else. */
function mostRows(
  desk: Desk,
  ask: (factor: CompareFactor, season: null, on: Desk, and: CompareFactor | null) => unknown,
): Goal {
  const { reading, rowsRead } = countingReads(desk);
  const questions = COMPARE_FACTORS.flatMap((factor, at) =>
    [null, ...COMPARE_FACTORS.slice(at + 1)].map((and) => ({ factor, and })),
  );
  const counts = questions.map(({ factor, and }) => {
    ask(factor, null, desk, and);
    ask(factor, null, reading, and);
    return { factor, and, read: rowsRead() };
  });
  const all = counts.map(({ factor, and, read }) => ({
    name: and === null ? factor : `${factor} and ${and}`,
    rows: Object.values(read).reduce((sum, rows) => sum + rows, 0),
  }));
  const most = all.reduce((largest, one) => (one.rows > largest.rows ? one : largest));
  const tables = [...new Set(counts.flatMap(({ read }) => Object.keys(read)))].toSorted();
  return {
    id: 'season-rows',
    what: `rows read over ${SEASONS} seasons by the greediest of ${all.length} questions, ${most.name} (from ${tables.join(' and ')})`,
    value: most.rows,
    goal: `at most ${MOST_ROWS}, no cell, batch or tally among them`,
    ok: most.rows <= MOST_ROWS && tables.every((table) => table === 'seasonSums' || table === 'colonies'),
  };
}

const atMost = (id: string, what: string, most: number, value: number): Goal => ({
  id,
  what: `${what}, against a bare scan of ${SEASONS * BATCHES * CELLS} cells`,
  value,
  goal: `at most ${most} times`,
  ok: value <= most,
});

const nth = <Value>(list: readonly Value[], index: number): Value => list[index % list.length] as Value;

/** Batches of four methods from ten builders and ten breeders, from May to July, each with one box. */
function filledDesk() {
  const desk = aDesk({ today: '2026-12-01' });
  fill(desk, (tables) => {
    for (let hive = 0; hive < HIVES; hive += 1)
      tables.colonies.insert({ ...A_HIVE, id: `hive-${hive}`, code: `H${hive}` });
    for (const boxType of BOX_TYPES) tables.boxes.insert({ ...A_BOX, id: boxType, code: boxType, boxType });
    for (let season = FIRST_SEASON; season < FIRST_SEASON + SEASONS; season += 1)
      for (let number = 1; number <= BATCHES; number += 1) {
        const id = `${season}-${number}`;
        const anchorOn = `${season}-0${5 + (number % 3)}-04`;
        tables.batches.insert({
          ...aBatch({ id, code: id, season, method: nth(METHODS, number), anchorOn, comb: null }),
          // Three breeders a season, other ones the next; all ten hives build.
          ...{ breederId: `hive-${(season + (number % 3)) % HIVES}`, builderId: `hive-${number % HIVES}` },
        });
        tables.tallies.put({ batchId: id, ...SUMS });
        tables.placements.insert({
          ...{ id, boxId: nth(BOX_TYPES, number), batchId: id, barId: null },
          ...{ placedOn: anchorOn, endedOn: anchorOn, endReason: null },
        });
      }
  });
  return desk;
}

const A_HIVE = { name: null, yardId: null, place: null, motherLine: null, note: null, endedOn: null };
const A_BOX = { yardId: null, row: null, walkOrder: 0, note: null, retiredOn: null };

const everySeasonTouched = ({ tallies }: Tables): void => {
  for (let season = FIRST_SEASON; season < FIRST_SEASON + SEASONS; season += 1)
    tallies.put({ batchId: `${season}-1`, ...SUMS });
};

function filledCells() {
  const db = new Database(':memory:');
  db.exec(
    'CREATE TABLE cell (id INTEGER PRIMARY KEY, batch, taken INTEGER, sealed INTEGER, emerged INTEGER, proved INTEGER)',
  );
  const insert = db.prepare('INSERT INTO cell (batch, taken, sealed, emerged, proved) VALUES (?, 1, 1, 1, 0)');
  db.transaction(() => {
    for (let cell = 0; cell < SEASONS * BATCHES * CELLS; cell += 1) insert.run(cell % (SEASONS * BATCHES));
  })();
  return db;
}

function cpu(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function repeat(work: () => unknown, times: number): void {
  for (let time = 0; time < times; time += 1) work();
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
