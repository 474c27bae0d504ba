import type { z } from 'zod';
import type { BatchPreview } from '../../../shared/contract/batches.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { TimetablePreview, WorkAhead } from '../../../shared/contract/timetable.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { sumMaterials, sumWork } from '../../engine/calendar/sum-work.ts';
import { copyOf, plainInput, timetableView } from '../batch-calendar.ts';
import type { Desk } from '../operation.ts';
import { planningRules } from '../planning-rules.ts';
import { combRefusal } from './check-start.ts';

/** The timetable a batch would have, while its form is being filled in. Nothing is written. */
export function previewBatch(
  { workbook, today }: Desk,
  input: z.infer<typeof BatchPreview>,
): Result<TimetablePreview, Refusal> {
  const noComb = combRefusal(input);
  if (noComb) return refuse(noComb);
  const planned = planTimetable(plainInput(workbook.tables, input, null));
  if (!planned.ok) return planned;
  const view = timetableView(planned.value, {
    today,
    moves: new Map(),
    drops: new Map(),
    copy: copyOf(workbook.tables, input),
    dronesMatureFrom: planningRules(workbook.tables).dronesMatureFrom,
  });
  return ok({ ...view, work: workOf(planned.value) });
}

/** All its jobs, those already past included: what a batch from that day asks of a person. */
function workOf({ steps }: Timetable): WorkAhead | null {
  const [first, last] = [steps.at(0), steps.at(-1)];
  if (!first || !last) return null;
  const ends = steps.map(({ expected }) => expected).toSorted((a, b) => a - b);
  const days = sumWork(steps, ends[0] ?? first.expected, ends.at(-1) ?? last.expected);
  const longest = days.toSorted((a, b) => b.minutes - a.minutes)[0];
  if (!longest) return null;
  return {
    minutes: days.reduce((sum, { minutes }) => sum + minutes, 0),
    days: days.length,
    longest: { on: isoOfDay(longest.on), minutes: longest.minutes },
    materials: sumMaterials(steps.filter(({ kind }) => kind === 'job')).map(({ material }) => material),
  };
}
