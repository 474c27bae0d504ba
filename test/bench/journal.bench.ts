import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type Database from 'better-sqlite3';
import { keepTally } from '../../main/operations/tally-keeping.ts';
import { connectForWriting, makeSavesDurable } from '../../main/workbook/connect.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import type { Count } from '../../shared/model/batch.ts';
import { aBar, aBatch } from '../builders/batch.ts';
import { aCountedWorkbook, BARS, countsOf, mustOk } from './counted-workbook.ts';
import type { Goal } from './goal.ts';

const ROUNDS = 60;
const MOST_TIMES = 2;

/**
 * Ten bars with four counts each, saved as one change with its journal and the batch's sums, against the same forty rows
 * in one flushed transaction of plain SQLite: typed for the first time, and all typed over. Rounds are paired, each with
 * other figures or another batch; median of ratios.
 */
export async function goals(): Promise<readonly Goal[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  try {
    const workbook = aCountedWorkbook(folder, 'ours');
    addBatches(workbook);
    workbook.saveAs(join(folder, 'bare.ripecell'));
    const bare = aBareFile(join(folder, 'bare.ripecell'));
    const typed = ratioOf(
      (round) => saveCounts(workbook, `batch-${round}`, (table) => firstCounts(round).forEach(table.insert)),
      (round) => bare.insertAll(firstCounts(round)),
    );
    const typedOver = ratioOf(
      (round) => saveCounts(workbook, 'batch-1', (table) => countsOf(round + 1).forEach(table.update)),
      (round) => bare.updateAll(countsOf(round + 1)),
    );
    workbook.close();
    bare.close();
    return [
      goal('journal-save', 'saving the forty counts of a batch with journal and sums', typed),
      goal('journal-correct', 'typing over all forty, with journal and sums', typedOver),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const goal = (id: string, what: string, times: number): Goal => ({
  id,
  what: `${what}, against the same rows in plain SQLite, both flushed`,
  value: times,
  goal: `at most ${MOST_TIMES}`,
  ok: times <= MOST_TIMES,
});

function ratioOf(ours: (round: number) => void, plain: (round: number) => void): number {
  const ratios = Array.from({ length: ROUNDS }, (_, round) => {
    const number = round + 2;
    if (round % 2 === 0) return millisecondsOf(() => ours(number)) / millisecondsOf(() => plain(number));
    const last = millisecondsOf(() => plain(number));
    return millisecondsOf(() => ours(number)) / last;
  });
  const median = ratios.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? Number.POSITIVE_INFINITY;
  return Math.round(median * 100) / 100;
}

function millisecondsOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** One batch for each round, its bars not counted yet. */
function addBatches(workbook: Workbook): void {
  mustOk(
    workbook.change({ did: 'other' }, ({ batches, bars }) => {
      for (let batch = 2; batch < ROUNDS + 2; batch += 1) {
        batches.insert(aBatch({ id: `batch-${batch}`, code: `26-${batch}` }));
        for (let bar = 1; bar <= BARS; bar += 1)
          bars.insert(aBar({ id: `bar-${batch}-${bar}`, batchId: `batch-${batch}`, number: bar }));
      }
      return ok(null);
    }),
  );
}

const firstCounts = (batch: number): readonly Count[] =>
  countsOf(batch).map((count) => ({
    ...count,
    id: `${count.id}-${batch}`,
    batchId: `batch-${batch}`,
    barId: count.barId.replace('bar-', `bar-${batch}-`),
  }));

interface CountTable {
  readonly insert: (count: Count) => void;
  readonly update: (count: Count) => void;
}

function saveCounts(workbook: Workbook, batchId: string, write: (counts: CountTable) => void): void {
  mustOk(
    workbook.change({ did: 'record-bar-counts', batch: '26-01', bar: null }, (tables) => {
      const { counts } = tables;
      write({ insert: (count) => counts.insert(count), update: (count) => counts.update(count) });
      keepTally(tables, batchId);
      return ok(null);
    }),
  );
}

function aBareFile(file: string) {
  const db: Database.Database = connectForWriting(file);
  makeSavesDurable(db);
  const insert = db.prepare(
    'INSERT INTO count (batch_id, bar_id, stage, cells, counted_on, id) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const update = db.prepare(
    'UPDATE count SET batch_id = ?, bar_id = ?, stage = ?, cells = ?, counted_on = ? WHERE id = ?',
  );
  const all = (statement: Database.Statement) => (counts: readonly Count[]) => {
    db.exec('BEGIN IMMEDIATE');
    for (const { id, batchId, barId, stage, cells, countedOn } of counts)
      statement.run(batchId, barId, stage, cells, countedOn, id);
    db.exec('COMMIT');
  };
  return { insertAll: all(insert), updateAll: all(update), close: () => db.close() };
}
