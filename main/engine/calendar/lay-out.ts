import type { StepRow } from '../../../shared/biology/step-row.ts';
import type { Step } from '../../../shared/model/step.ts';
import type { StepChange } from '../../../shared/model/timetable.ts';
import type { Plan } from './compile-plan.ts';
import type { EmergenceDays } from './emergence-hours.ts';

/** Days from day 0. */
export interface DayWindow {
  readonly earliest: number;
  readonly expected: number;
  readonly latest: number;
}

export interface LaidOutRow extends DayWindow {
  readonly row: StepRow;
}

export interface LaidOut {
  /** By expected day, then in the natural order of steps. */
  readonly rows: readonly LaidOutRow[];
  readonly emergence: EmergenceDays;
  /** The rows' earliest, expected and latest days in one flat list, for expanding many batches at once. */
  readonly flatDays: Int32Array;
  readonly expectedByStep: ReadonlyMap<Step, number>;
}

/** Days from day 0 on which something was really done or was put by the person; they carry later rows with them. */
export interface KnownDays {
  readonly placed: number | null;
  readonly emerged: number | null;
}

/** Puts every row of a plan on its days from day 0. */
export function layOut(plan: Plan, emergence: EmergenceDays, known: KnownDays): LaidOut {
  const emerged = known.emerged ?? emergence.expected;
  const placing = placingWindow(plan, emergence);
  const placed = known.placed ?? placing.expected;
  const rows = plan.rows.map((row): LaidOutRow => {
    if (row.step === 'emergence') return { row, ...emergenceWindowOf(plan, emergence) };
    if (row.step === 'place-cells') return { row, ...placing };
    if (row.step === 'hands-off-cells') return { row, ...quietDays(row, placing) };
    const change = plan.changes.get(row.step);
    const base = row.base === 'larvae' ? 0 : row.base === 'placing' ? placed : emerged;
    return { row, ...(change ? changedWindow(change, row, emerged) : window(row.days, base)) };
  });
  // Sorting is stable, and a plan's rows stand in the natural order of steps.
  const inOrder = rows.toSorted((a, b) => a.expected - b.expected);
  const flatDays = Int32Array.from(inOrder.flatMap(({ earliest, expected, latest }) => [earliest, expected, latest]));
  const expectedByStep = new Map(inOrder.map(({ row, expected }) => [row.step, expected]));
  return { rows: inOrder, emergence, flatDays, expectedByStep };
}

const window = ([earliest, expected, latest]: StepRow['days'], base: number): DayWindow => ({
  earliest: base + earliest,
  expected: base + expected,
  latest: base + latest,
});

/** Day of emergence that a change of the method's days was written for: a larva of 24 hours at 34.5 °C. */
const STANDARD_EMERGENCE_DAY = 12;

/** A person's own days; those that hang on placing or emergence move with the brood like the built-in ones. */
function changedWindow(change: StepChange, row: StepRow, emerged: number): DayWindow {
  const moves = row.base === 'larvae' ? 0 : emerged - STANDARD_EMERGENCE_DAY;
  return {
    earliest: Math.floor(change.earliestDay) + moves,
    expected: Math.floor(change.expectedDay) + moves,
    latest: Math.floor(change.latestDay) + moves,
  };
}

function emergenceWindowOf(plan: Plan, emergence: EmergenceDays): DayWindow {
  const change = plan.changes.get('emergence');
  const { earliest, expected, latest } = emergence;
  if (!change) return { earliest, expected, latest };
  return {
    earliest: Math.min(earliest, Math.floor(change.earliestDay)),
    expected: Math.floor(change.expectedDay),
    latest: Math.max(latest, Math.floor(change.latestDay)),
  };
}

/**
 * Ripe cells move on the last safe day, two days before the expected emergence of larvae of 24 hours; the day before
 * will do. A copied method may ask for earlier days, but no copy moves the deadline.
 */
function placingWindow(plan: Plan, { placeDeadline }: EmergenceDays): DayWindow {
  const change = plan.changes.get('place-cells');
  if (!change) return { earliest: placeDeadline - 1, expected: placeDeadline, latest: placeDeadline };
  const notAfterDeadline = (day: number): number => Math.min(Math.floor(day), placeDeadline);
  return {
    earliest: notAfterDeadline(change.earliestDay),
    expected: notAfterDeadline(change.expectedDay),
    latest: notAfterDeadline(change.latestDay),
  };
}

/** The quiet days end before cells may be moved, also where old larvae ripen early. */
function quietDays(row: StepRow, placing: DayWindow): DayWindow {
  const [from, , to] = row.days;
  const last = Math.max(from, Math.min(to, placing.earliest - 1));
  return { earliest: from, expected: from, latest: last };
}
