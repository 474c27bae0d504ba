// The season comparison of twenty seasons, from the kept sums: it must stay far below reading every cell.
import Database from 'better-sqlite3';
import { compareSeason } from '../../main/operations/season/compare-season.ts';
import type { Batch } from '../../shared/model/batch.ts';
import { aBatch } from '../builders/batch.ts';
import { aDesk, fill } from '../builders/desk.ts';
import type { Goal } from './calendar.bench.ts';

const SEASONS = 20;
const BATCHES = 60;
const CELLS = 40;
const ROUNDS = 15;
const METHODS = ['larva-grafting', 'cut-comb-edge', 'cell-punch', 'comb-strip'] as const;

export function goals(): readonly Goal[] {
  const desk = filledDesk();
  const cells = filledCells();
  const scan = cells.prepare('SELECT sum(taken), sum(sealed), sum(emerged), sum(proved) FROM cell');
  const compare = (season: number | null) =>
    compareSeason(desk, { factor: 'method', and: null, season, leaveOutPractice: true });
  if (compare(null).rows.length !== METHODS.length) throw new Error('the comparison does not see all methods');
  const measured = Array.from({ length: ROUNDS + 1 }, () => ({
    bare: cpu(() => repeat(() => scan.get(), 20)) / 20,
    all: cpu(() => compare(null)),
    one: cpu(() => compare(2020)),
  })).slice(1);
  const ratio = (of: (times: (typeof measured)[number]) => number) =>
    Math.round(1000 * median(measured.map((times) => of(times) / times.bare))) / 1000;
  return [
    atMost(
      'season-all',
      'comparing 20 seasons of 60 batches from kept sums',
      4,
      ratio(({ all }) => all),
    ),
    atMost(
      'season-one',
      'comparing one season of them',
      0.5,
      ratio(({ one }) => one),
    ),
  ];
}

const atMost = (id: string, what: string, most: number, value: number): Goal => ({
  id,
  what: `${what}, against a bare scan of ${SEASONS * BATCHES * CELLS} cells`,
  value,
  goal: `at most ${most} times`,
  ok: value <= most,
});

function filledDesk() {
  const desk = aDesk({ today: '2026-12-01' });
  fill(desk, (tables) => {
    for (let season = 2007; season < 2007 + SEASONS; season += 1)
      for (let number = 1; number <= BATCHES; number += 1) {
        const id = `${season}-${number}`;
        const method = METHODS[number % METHODS.length] ?? 'larva-grafting';
        const batch: Batch = aBatch({ id, code: id, season, method, anchorOn: `${season}-05-04`, comb: null });
        tables.batches.insert({ ...batch, breederId: null, builderId: null });
        const sums = { given: 40, taken: 30, enteredSealing: 30, sealed: 28, placed: 28, emergenceKnown: 28 };
        tables.tallies.put({ batchId: id, ...sums, emerged: 25, matingKnown: 25, proved: 19, laying: 20 });
      }
  });
  return desk;
}

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
