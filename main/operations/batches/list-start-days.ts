import type { z } from 'zod';
import type { BatchPreview } from '../../../shared/contract/batches.ts';
import type { StartDayList } from '../../../shared/contract/clashes.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { addDays, type Day, isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { unreachable } from '../../../shared/kernel/unreachable.ts';
import type { StartTrouble, StartTroubleOf } from '../../../shared/model/clash.ts';
import { builderUse } from '../../engine/calendar/find-clashes.ts';
import { findStartDays, START_SEARCH_DAYS, type StartSearch } from '../../engine/calendar/find-start-days.ts';
import { planTimetable } from '../../engine/calendar/plan-timetable.ts';
import { reserveBoxes } from '../../engine/calendar/reserve-boxes.ts';
import { plainInput } from '../batch-calendar.ts';
import { runningBatches } from '../hands-off.ts';
import type { Desk } from '../operation.ts';
import { plannedBoxes } from '../planned-boxes.ts';
import { planningRules } from '../planning-rules.ts';
import { plannedBatch } from '../read-clashes.ts';
import { combRefusal } from './check-start.ts';

type Preview = z.infer<typeof BatchPreview>;

/** Each day of the coming weeks as a start for the batch in the form: what speaks against it, good days ranked. */
export function listStartDays(desk: Desk, input: Preview): Result<StartDayList, Refusal> {
  const noComb = combRefusal(input);
  if (noComb) return refuse(noComb);
  const { tables } = desk.workbook;
  const batch = plainInput(tables, { ...input, anchorOn: isoOfDay(desk.today) }, null);
  const planned = planTimetable(batch);
  if (!planned.ok) return planned;
  const search = searchOf(desk, input, batch);
  const found = findStartDays(search);
  if (!found.ok) return found;
  const placing = planned.value.steps.find(({ step }) => step === 'place-cells')?.expected ?? null;
  const shifted = (day: Day, on: Day) => isoOfDay(addDays(day, on - desk.today));
  return ok({
    days: found.value.map(({ on, troubles, ...day }) => ({
      ...day,
      on: isoOfDay(on),
      troubles: troubles.map(isoTrouble),
      placeOn: placing === null ? null : shifted(placing, on),
      emergesOn: shifted(planned.value.emergence.expected, on),
    })),
    names: Object.fromEntries(
      search.builderTaken.map((taken) => [taken.batch, tables.batches.get(taken.batch)?.code ?? '']),
    ),
  });
}

function searchOf({ workbook: { tables }, today }: Desk, input: Preview, batch: StartSearch['batch']): StartSearch {
  const rules = planningRules(tables);
  const running = runningBatches(tables, today).map((one) => plannedBatch(tables, one));
  return {
    batch,
    startStep: input.anchorStep,
    from: today,
    days: START_SEARCH_DAYS,
    cells: input.cellsPlanned,
    builderTaken: running
      .filter(({ builderId }) => builderId !== null && builderId === input.builderId)
      .map((one) => {
        const { from, freeFrom } = builderUse(one, rules.builderRestDays);
        return { from, to: addDays(freeFrom, -1), batch: one.id };
      }),
    boxes: reserveBoxes(plannedBoxes(tables, today), running),
    rules,
  };
}

function isoTrouble(trouble: StartTrouble): StartTroubleOf<string> {
  switch (trouble.kind) {
    case 'must-step-away':
    case 'starts-in-past':
    case 'too-few-boxes':
      return { ...trouble, on: isoOfDay(trouble.on) };
    case 'builder-taken':
      return { ...trouble, until: isoOfDay(trouble.until) };
    case 'no-drones-yet':
      return {
        ...trouble,
        fliesFrom: isoOfDay(trouble.fliesFrom),
        dronesMatureFrom: isoOfDay(trouble.dronesMatureFrom),
      };
    default:
      return unreachable(trouble);
  }
}
