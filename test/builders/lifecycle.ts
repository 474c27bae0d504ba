import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import type { Lifecycle } from '../../main/operations/workbook/lifecycle.ts';
import { startKeeper } from '../../main/workbook/keeper.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { countedIds, fill, MIGRATIONS_FOLDER } from './desk.ts';
import { aFolder } from './workbook-file.ts';
import { aYard } from './yard.ts';

export interface Computer {
  readonly documents: string;
  readonly programData: string;
  readonly migrations: string;
}

/** A computer with an empty documents folder on which the program was never started. */
export function aComputer(): Computer {
  const folder = aFolder();
  const documents = join(folder, 'documents');
  mkdirSync(documents);
  return { documents, programData: join(folder, 'program'), migrations: MIGRATIONS_FOLDER };
}

export const NOON = '2026-06-01T12:00:00.000Z';

export const aClock = (today: IsoDay = '2026-06-01') => ({
  today: () => dayOfIso(today),
  now: () => NOON,
  report: failTest,
});

/** An error that was put aside must not be overlooked. */
const failTest = (error: unknown) => {
  throw error;
};

/** What the operations that open and close workbooks are handed; the demo is one yard, held on 10 July 2025. */
export function aLifecycle(changes: Partial<Lifecycle> = {}, computer: Computer = aComputer()): Lifecycle {
  const keeper = startKeeper({
    ...computer,
    migrations: readMigrations(MIGRATIONS_FOLDER),
    now: () => NOON,
    report: failTest,
  });
  onTestFinished(() => keeper.stop());
  return {
    keeper,
    clock: aClock(),
    ids: countedIds(),
    reckon: reckonHere(),
    computerLanguage: 'en',
    version: '0.1.0',
    demo: {
      day: dayOfIso('2025-07-10'),
      build: (desk) => fill(desk, ({ yards }) => yards.insert(aYard({ name: 'Made up' }))),
    },
    ...changes,
  };
}
