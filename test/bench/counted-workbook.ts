import { join } from 'node:path';
import { createWorkbookFile } from '../../main/workbook/create-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { Workbook } from '../../main/workbook/workbook.ts';
import { ok, type Result } from '../../shared/kernel/result.ts';
import { COUNTED_STAGES } from '../../shared/model/batch.ts';
import { aBar, aBatch } from '../builders/batch.ts';
import { MIGRATIONS_FOLDER } from '../builders/desk.ts';

export const BARS = 10;
/** Figures that never contradict each other. */
const MOST = { given: 40, taken: 30, removed: 5, sealed: 20 } as const;

/** A workbook on the drive with a batch of ten bars, each counted four times. */
export function aCountedWorkbook(folder: string, name = 'counted'): Workbook {
  const workbook = mustOk(
    createWorkbookFile(
      { file: join(folder, `${name}.ripecell`), name: 'Bench', kind: 'real' },
      {
        migrations: readMigrations(MIGRATIONS_FOLDER),
        safetyFolder: join(folder, 'safety'),
        now: () => new Date().toISOString(),
      },
    ),
  );
  mustOk(
    workbook.change({ did: 'other' }, ({ batches, bars, counts }) => {
      batches.insert(aBatch());
      for (let bar = 1; bar <= BARS; bar += 1) bars.insert(aBar({ id: `bar-${bar}`, number: bar }));
      for (const row of countsOf(0)) counts.insert(row);
      return ok(null);
    }),
  );
  return workbook;
}

/** Forty counts; every round has other figures, so that every row really changes. */
export const countsOf = (round: number) =>
  Array.from({ length: BARS }, (_, bar) =>
    COUNTED_STAGES.map((stage) => ({
      id: `count-${bar + 1}-${stage}`,
      batchId: 'batch-1',
      barId: `bar-${bar + 1}`,
      stage,
      cells: MOST[stage] - ((round + bar) % 5),
      countedOn: '2026-05-09',
    })),
  ).flat();

/** One form of so many counts, saved as one named step with its journal. */
export function saveForm(workbook: Workbook, round: number, counts: number): void {
  mustOk(
    workbook.change({ did: 'record-bar-counts', batch: '26-01', bar: null }, (tables) => {
      for (const row of countsOf(round).slice(0, counts)) tables.counts.update(row);
      return ok(null);
    }),
  );
}

export function mustOk<Value>(result: Result<Value, unknown>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.value;
}
