import type { StepRow } from '../../../shared/biology/step-row.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { StepChange } from '../../../shared/model/timetable.ts';
import { compilePlan, type PlanChoice, withChanges } from './compile-plan.ts';
import { emergenceDays } from './emergence-hours.ts';
import { type DayWindow, layOut } from './lay-out.ts';
import { usualLaying } from './laying-interval.ts';
import { usualLayOut } from './usual-lay-out.ts';

/** One line of the method editor: a built-in step, its days from the day larvae are given, and the copy's own days. */
export interface MethodDay {
  readonly row: StepRow;
  readonly builtIn: DayWindow;
  /** What the copy comes to; equal to `builtIn` where it changes nothing. Safety deadlines hold for copies too. */
  readonly own: DayWindow;
  readonly changed: boolean;
}

/** A method laid out in days, beside what a person's copy makes of it. Changes must have been checked before. */
export function methodDays(choice: PlanChoice, changes: readonly StepChange[]): readonly MethodDay[] {
  const plan = compilePlan(choice);
  const builtIn = usualLayOut(plan, null, null);
  const days = emergenceDays(usualLaying(plan.table, null), null);
  const own = layOut(withChanges(plan, changes), days, { placed: null, emerged: null });
  const ownByStep = new Map<Step, DayWindow>(own.rows.map(({ row, ...window }) => [row.step, window]));
  return builtIn.rows.map(({ row, ...window }): MethodDay => {
    const ownWindow = ownByStep.get(row.step) ?? window;
    return { row, builtIn: window, own: ownWindow, changed: !same(window, ownWindow) };
  });
}

const same = (a: DayWindow, b: DayWindow): boolean =>
  a.earliest === b.earliest && a.expected === b.expected && a.latest === b.latest;
