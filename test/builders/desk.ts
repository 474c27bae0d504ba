import { fileURLToPath } from 'node:url';
import { reckonHere } from '../../main/engine/yield/reckon.ts';
import type { Desk } from '../../main/operations/operation.ts';
import type { Ids } from '../../main/ports/ports.ts';
import { openMemoryWorkbook } from '../../main/workbook/memory-workbook.ts';
import { readMigrations } from '../../main/workbook/migrations.ts';
import type { Tables } from '../../main/workbook/workbook.ts';
import type { Refusal } from '../../shared/contract/refusal.ts';
import { dayOfIso, type IsoDay } from '../../shared/kernel/day.ts';
import { ok, type Result } from '../../shared/kernel/result.ts';

export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../../main/workbook/migrations', import.meta.url));

/** id-1, id-2 ...: the same in every run. */
export function countedIds(prefix = 'id'): Ids {
  let made = 0;
  return {
    next: () => {
      made += 1;
      return `${prefix}-${made}`;
    },
  };
}

/** An empty workbook in memory, a fixed day and counted ids: everything an operation needs. */
export function aDesk({ today = '2026-06-01' }: { readonly today?: IsoDay } = {}): Desk {
  return {
    workbook: openMemoryWorkbook(readMigrations(MIGRATIONS_FOLDER)),
    today: dayOfIso(today),
    ids: countedIds(),
    reckon: reckonHere(),
    computerLanguage: 'en',
  };
}

/** Puts rows into the desk's workbook, past the operations; throws if that is refused. */
export function fill(desk: Desk, write: (tables: Tables) => void): void {
  mustOk(
    desk.workbook.change({ did: 'other' }, (tables) => {
      write(tables);
      return ok(null);
    }),
  );
}

/** The value of a result that the test needs to be ok. */
export function mustOk<Value>(result: Result<Value, Refusal>): Value {
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.refusal)}`);
  return result.value;
}
