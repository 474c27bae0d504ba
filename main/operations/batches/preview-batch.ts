import type { z } from 'zod';
import type { BatchPreview } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { TimetableView } from '../../../shared/contract/timetable.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { copyOf, plainInput, timetableView } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { combRefusal } from './check-start.ts';

/** The timetable a batch would have, while its form is being filled in. Nothing is written. */
export function previewBatch(
  { workbook, today }: Desk,
  input: z.infer<typeof BatchPreview>,
): Result<TimetableView, Refusal> {
  const noComb = combRefusal(input);
  if (noComb) return refuse(noComb);
  const planned = planTimetable(plainInput(workbook.tables, input, null));
  return planned.ok ? ok(timetableView(planned.value, new Set(), today, copyOf(workbook.tables, input))) : planned;
}
