import type { z } from 'zod';
import type { BatchPreview } from '../../../shared/contract/batches.ts';
import type { ClashList } from '../../../shared/contract/clashes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { plainInput } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { clashesOf, clashList, readClashes } from '../read-clashes.ts';
import { combRefusal } from './check-start.ts';

/** Stands for the batch that is still a form; no stored id has a blank in it. */
const THIS_BATCH = 'this batch';

/** What would clash with the batches there are, if the batch in the form were started. Nothing is written. */
export function previewClashes(desk: Desk, input: z.infer<typeof BatchPreview>): Result<ClashList, Refusal> {
  const noComb = combRefusal(input);
  if (noComb) return refuse(noComb);
  const { tables } = desk.workbook;
  const planned = planTimetable(plainInput(tables, input, null));
  if (!planned.ok) return planned;
  const clashes = readClashes(desk, {
    id: THIS_BATCH,
    timetable: planned.value,
    builderId: input.builderId,
    breederId: input.breederId,
    cells: input.cellsPlanned,
    barIds: [],
  });
  return ok(clashList(tables, clashesOf(clashes, THIS_BATCH)));
}
