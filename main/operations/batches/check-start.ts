import type { BatchStart } from '../../../shared/contract/batches.ts';
import type { Notice, Refusal } from '../../../shared/contract/refusal.ts';
import { addDays, isoOfDay } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { builderUse } from '../../engine/calendar/find-clashes.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { builderHolds, holdOf } from '../builder-holds.ts';

/** The days of a cut-comb batch hang on whether the comb was drawn already. */
export function combRefusal(input: Pick<BatchStart, 'method' | 'comb'>): Refusal | null {
  return input.method === 'cut-comb-edge' && input.comb === null ? { kind: 'comb-needed', field: 'comb' } : null;
}

/** A code that is taken, or two new hives under one code. */
export function codeRefusal(tables: Tables, input: BatchStart): Refusal | null {
  if (input.code !== null && tables.batches.where({ code: input.code }).length > 0)
    return { kind: 'batch-code-taken', field: 'code', code: input.code };
  for (const field of ['newBreeder', 'newBuilder'] as const) {
    const code = input[field]?.code;
    if (code !== undefined && tables.colonies.where({ code }).length > 0)
      return { kind: 'hive-code-taken', field, code };
  }
  return null;
}

export function hiveRefusal(tables: Tables, input: BatchStart): Refusal | null {
  for (const field of ['breederId', 'builderId'] as const) {
    const id = input[field];
    if (id !== null && !tables.colonies.get(id)) return { kind: 'hive-not-found', field };
  }
  return null;
}

/** A builder carries one batch at a time: refused when the spans truly overlap. A batch that is moved is not in its own way. */
export function builderRefusal(
  tables: Tables,
  builderId: string,
  timetable: Timetable,
  moved: Id | null = null,
): Refusal | null {
  const { from, until } = holdOf(timetable);
  const clash = builderHolds(tables, builderId).find(
    (hold) => hold.batchId !== moved && hold.from < until && from < hold.until,
  );
  if (!clash) return null;
  const builder = tables.colonies.get(builderId)?.code ?? '';
  return { kind: 'builder-in-use', field: 'builderId', builder, batch: clash.batch, until: isoOfDay(clash.until) };
}

/** A builder that has just given up cells should rest through all its days first; said, not forbidden. */
export function restNotice(
  tables: Tables,
  builderId: string,
  timetable: Timetable,
  restDays: number,
): readonly Notice[] {
  const { from } = builderUse({ timetable }, restDays);
  const resting = builderHolds(tables, builderId).find(
    (hold) => hold.until <= timetable.larvaeGivenOn && from <= addDays(hold.until, restDays),
  );
  if (!resting) return [];
  const builder = tables.colonies.get(builderId)?.code ?? '';
  return [{ kind: 'builder-resting', builder, until: isoOfDay(addDays(resting.until, restDays)) }];
}
