import type { z } from 'zod';
import type { ImportWorkbook, WorkbookFilePreview } from '../../../shared/contract/import.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { planWhole } from './whole-plan.ts';

const SHOWN_PROBLEMS = 100;

/** A dry run of taking in a file of everything. */
export function previewWorkbook(
  desk: Desk,
  input: z.infer<typeof ImportWorkbook>,
): Result<WorkbookFilePreview, Refusal> {
  const planned = planWhole(desk, input);
  if (!planned.ok) return planned;
  const { name, exportedOn, same, problems } = planned.value;
  const counts =
    planned.value.whole === null
      ? { added: 0, changed: 0 }
      : { added: planned.value.added.length, changed: planned.value.changed.length };
  return ok({ name, exportedOn, ...counts, same, problems: problems.slice(0, SHOWN_PROBLEMS) });
}
