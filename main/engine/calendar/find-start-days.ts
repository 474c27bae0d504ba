import { addDays, type Day } from '../../../shared/kernel/day.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { PlannedBox, PlanningRules, StartDay, StartTrouble } from '../../../shared/model/clash.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import type { CalendarInput, CalendarRefusal } from '../../../shared/model/timetable.ts';
import { suitingDays } from './day-suits.ts';
import { builderUse, firstFlights, isOpenMust } from './find-clashes.ts';
import { planTimetable } from './plan-timetable.ts';

/** What a start is looked for. The first day tried is `from`. */
export interface StartSearch {
  readonly batch: Pick<CalendarInput, 'method' | 'comb' | 'builderType' | 'boxType' | 'larvaAgeHours' | 'changes'>;
  /** The step that is done on the start day: for most methods `give-larvae`, or the comb put in. */
  readonly startStep: Step;
  readonly from: Day;
  readonly days: number;
  readonly cells: number | null;
  /** Days on which the builder is taken or rests, both ends included. */
  readonly builderTaken: readonly { readonly from: Day; readonly to: Day; readonly batch: string }[];
  readonly boxes: readonly PlannedBox[];
  readonly rules: PlanningRules;
}

/** How many days are looked at where nothing else is said. */
export const START_SEARCH_DAYS = 60;

/**
 * Every start day in the span with the reasons it fails; good days are ranked, those with fewer shifted must-steps
 * first, then the earlier. Exact: each day is judged by itself. A timetable is the same on every day but for its
 * shift, so it is planned once.
 */
export function findStartDays(search: StartSearch): Result<readonly StartDay[], CalendarRefusal> {
  const planned = planTimetable({
    ...search.batch,
    anchor: { step: search.startStep, on: search.from },
    sealedStageCelsius: null,
    seen: [],
    done: [],
    moved: [],
  });
  if (!planned.ok) return planned;
  const timetable = planned.value;
  const first: FirstStart = {
    musts: timetable.steps.filter(isOpenMust),
    builder: builderUse({ timetable }, search.rules.builderRestDays),
    placing: timetable.steps.find((step) => step.step === 'place-cells') ?? null,
    fliesFrom: firstFlights(timetable),
  };
  const days = Array.from({ length: search.days }, (_, shift) => judgeStart(search, first, shift));
  return ok(ranked(days));
}

/** The timetable that starts on the first day of the search; every other start is this one shifted. */
interface FirstStart {
  readonly musts: readonly DatedStep[];
  readonly builder: ReturnType<typeof builderUse>;
  readonly placing: DatedStep | null;
  readonly fliesFrom: Day;
}

function judgeStart(search: StartSearch, first: FirstStart, shift: number): StartDay {
  const { rules } = search;
  const troubles: StartTrouble[] = [];
  const shiftedSteps: Step[] = [];
  for (const must of first.musts) {
    const expected = addDays(must.expected, shift);
    const latest = addDays(must.latest, shift);
    if (latest < search.from) {
      troubles.push({ kind: 'starts-in-past', step: must.step, on: expected });
      continue;
    }
    const suits = suitingDays(addDays(must.earliest, shift), latest, rules).filter((day) => day >= search.from);
    if (suits.length === 0) troubles.push({ kind: 'must-step-away', step: must.step, on: expected });
    else if (!suits.includes(expected)) shiftedSteps.push(must.step);
  }
  troubles.push(
    ...builderTrouble(search, first, shift),
    ...boxTrouble(search, first, shift),
    ...droneTrouble(rules, first, shift),
  );
  return { on: addDays(search.from, shift), troubles, shiftedSteps, rank: null };
}

function builderTrouble(search: StartSearch, first: FirstStart, shift: number): readonly StartTrouble[] {
  if (!first.placing) return [];
  const from = addDays(first.builder.from, shift);
  const freeFrom = addDays(first.builder.freeFrom, shift);
  return search.builderTaken
    .filter((taken) => taken.from < freeFrom && from <= taken.to)
    .map((taken) => ({ kind: 'builder-taken', batch: taken.batch, until: taken.to }));
}

function boxTrouble({ cells, boxes }: StartSearch, first: FirstStart, shift: number): readonly StartTrouble[] {
  if (!first.placing || cells === null) return [];
  const on = addDays(first.placing.expected, shift);
  const freeBoxes = boxes.filter(({ freeFrom }) => freeFrom !== null && freeFrom <= on).length;
  return freeBoxes >= cells ? [] : [{ kind: 'too-few-boxes', on, cells, freeBoxes }];
}

function droneTrouble({ dronesMatureFrom }: PlanningRules, first: FirstStart, shift: number): readonly StartTrouble[] {
  const fliesFrom = addDays(first.fliesFrom, shift);
  if (dronesMatureFrom === null || fliesFrom >= dronesMatureFrom) return [];
  return [{ kind: 'no-drones-yet', fliesFrom, dronesMatureFrom }];
}

function ranked(days: readonly StartDay[]): readonly StartDay[] {
  const good = days
    .filter((day) => day.troubles.length === 0)
    .toSorted((a, b) => a.shiftedSteps.length - b.shiftedSteps.length || a.on - b.on);
  const rankByDay = new Map(good.map((day, index) => [day.on, index + 1]));
  return days.map((day) => ({ ...day, rank: rankByDay.get(day.on) ?? null }));
}
