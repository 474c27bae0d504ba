import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type Database from 'better-sqlite3';
import { keepTally } from '../../main/operations/tally-keeping.ts';
import { connectForWriting, makeSavesDurable } from '../../main/workbook/connect.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { aCountedWorkbook, countsOf, mustOk } from './counted-workbook.ts';
import type { Goal } from './goal.ts';

const ROUNDS = 60;
const MOST_TIMES = 2;

/**
 * Ten bars with four counts each, saved as one change with its journal and the batch's sums, against the same forty rows
 * in one flushed transaction of plain SQLite. Rounds are paired, each with other figures; median of ratios.
 */
export async function goals(): Promise<readonly Goal[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ripecell-bench-'));
  try {
    const workbook = aCountedWorkbook(folder, 'ours');
    aCountedWorkbook(folder, 'bare').close();
    const bare = aBareFile(join(folder, 'bare.ripecell'));
    const ratios: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const ours = () => saveCounts(workbook, round);
      const plain = () => saveBare(bare, round);
      const [first, second] = round % 2 === 0 ? [ours, plain] : [plain, ours];
      const times = [millisecondsOf(first), millisecondsOf(second)] as const;
      ratios.push(round % 2 === 0 ? times[0] / times[1] : times[1] / times[0]);
    }
    workbook.close();
    bare.close();
    const times = ratios.toSorted((a, b) => a - b)[Math.floor(ratios.length / 2)] ?? Number.POSITIVE_INFINITY;
    return [
      {
        id: 'journal-save',
        what: 'saving forty counts with journal and sums, against the same rows in plain SQLite, both flushed',
        value: Math.round(times * 100) / 100,
        goal: `at most ${MOST_TIMES}`,
        ok: times <= MOST_TIMES,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function millisecondsOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function saveCounts(workbook: Workbook, round: number): void {
  mustOk(
    workbook.change({ did: 'record-bar-counts', batch: '26-01', bar: null }, (tables) => {
      for (const row of countsOf(round + 1)) tables.counts.update(row);
      keepTally(tables, 'batch-1');
      return ok(null);
    }),
  );
}

function aBareFile(file: string) {
  const db: Database.Database = connectForWriting(file);
  makeSavesDurable(db);
  const update = db.prepare(
    'UPDATE count SET batch_id = ?, bar_id = ?, stage = ?, cells = ?, counted_on = ? WHERE id = ?',
  );
  return { db, update, close: () => db.close() };
}

function saveBare({ db, update }: ReturnType<typeof aBareFile>, round: number): void {
  db.exec('BEGIN IMMEDIATE');
  for (const { id, batchId, barId, stage, cells, countedOn } of countsOf(round + 1))
    update.run(batchId, barId, stage, cells, countedOn, id);
  db.exec('COMMIT');
}
