import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { startKeeper } from '../../main/workbook/keeper.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { Keeper, Workbook } from '../../main/workbook/workbook.ts';
import { ok } from '../../shared/kernel/result.ts';
import { MIGRATIONS_FOLDER, mustOk } from './desk.ts';
import { aComputer, type Computer } from './lifecycle.ts';
import { aYard } from './yard.ts';

/** A keeper whose clock the test sets, as milliseconds after noon of 1 June 2026. */
export function aKeeperWithClock(computer: Computer = aComputer()) {
  const clock = { after: 0 };
  const start = (): Keeper => {
    const keeper = startKeeper({
      ...computer,
      migrations: readMigrations(MIGRATIONS_FOLDER),
      now: () => new Date(Date.UTC(2026, 5, 1, 12) + clock.after).toISOString(),
      report: (error) => {
        throw error;
      },
    });
    onTestFinished(() => keeper.stop());
    return keeper;
  };
  return { computer, clock, start, keeper: start() };
}

export function addYard(workbook: Workbook | null, id: string): void {
  if (workbook === null) throw new Error('No workbook is open.');
  mustOk(workbook.change({ did: 'other' }, ({ yards }) => ok(yards.insert(aYard({ id, name: `Yard ${id}` })))));
}

export const yardsIn = (workbook: Workbook | null): readonly string[] =>
  workbook?.tables.yards.all().map(({ id }) => id) ?? [];

/** What is under a name is no copy any more. */
export const spoil = (file: string): void => writeFileSync(file, 'spoilt');

export const safetyFolderOf = ({ programData }: Computer): string => join(programData, 'safety-copies');
