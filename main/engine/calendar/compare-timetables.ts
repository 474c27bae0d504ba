import type { Day } from '../../../shared/kernel/day.ts';
import type { DatedStep, Step, StepKind } from '../../../shared/model/step.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';

export interface StepWindow {
  readonly earliest: Day;
  readonly expected: Day;
  readonly latest: Day;
}

/** One line of the slip dialog. `was` or `becomes` is null where the step is new or falls away. */
export interface SlipLine {
  readonly step: Step;
  readonly kind: StepKind;
  readonly was: StepWindow | null;
  readonly becomes: StepWindow | null;
  /** Days by which the expected day moves; 0 when it stays or when one side is missing. */
  readonly movesBy: number;
  /** Earliest, expected or latest day differs. */
  readonly changed: boolean;
  /** The step was done; it cannot move. */
  readonly locked: boolean;
}

export interface Slip {
  /** In calendar order of what the timetable becomes. */
  readonly lines: readonly SlipLine[];
  readonly movedSteps: number;
  /** A date printed on box labels is no longer right. */
  readonly labelsOutOfDate: boolean;
  /** Steps whose entry in an exported calendar is no longer right. */
  readonly calendarEntriesOutOfDate: readonly Step[];
}

/** The days a box label carries: hands off until, first look, sealed-brood look. */
const ON_LABELS: readonly Step[] = ['hands-off-mating', 'first-look', 'sealed-brood-look'];

/** What a new fact does to a timetable, step by step: was and becomes, with done steps locked. */
export function compareTimetables(before: Timetable, after: Timetable): Slip {
  const gone = before.steps.filter((was) => !findStep(after, was.step));
  const lines = [
    ...after.steps.map((becomes) => slipLine(findStep(before, becomes.step), becomes)),
    ...gone.map((was) => slipLine(was, null)),
  ];
  const changed = lines.filter((line) => line.changed);
  return {
    lines,
    movedSteps: changed.length,
    labelsOutOfDate: changed.some((line) => ON_LABELS.includes(line.step)),
    calendarEntriesOutOfDate: changed.map((line) => line.step),
  };
}

function slipLine(was: DatedStep | null, becomes: DatedStep | null): SlipLine {
  const step = becomes ?? was;
  if (!step) throw new Error('a slip line needs a step on one side');
  return {
    step: step.step,
    kind: step.kind,
    was: windowOf(was),
    becomes: windowOf(becomes),
    movesBy: was && becomes ? becomes.expected - was.expected : 0,
    changed: !sameWindow(was, becomes),
    locked: was?.doneOn != null && becomes?.doneOn != null,
  };
}

const findStep = ({ steps }: Timetable, step: Step): DatedStep | null => steps.find((one) => one.step === step) ?? null;

const windowOf = (step: DatedStep | null): StepWindow | null =>
  step && { earliest: step.earliest, expected: step.expected, latest: step.latest };

const sameWindow = (a: DatedStep | null, b: DatedStep | null): boolean =>
  a?.earliest === b?.earliest && a?.expected === b?.expected && a?.latest === b?.latest;
