import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { addDays as addDaysOfDateFns } from 'date-fns';
import rrulePackage from 'rrule';
import { type BatchInput, type ExpandedBatches, expandBatches } from '../../main/engine/calendar/expand-batches.ts';
import { planTimetable } from '../../main/engine/calendar/plan-timetable.ts';
import { addDays, type Day, dayOfIso, isoOfDay } from '../../shared/kernel/day.ts';
import type { Timetable } from '../../shared/model/timetable.ts';
import type { Goal } from './goal.ts';

const { RRule } = rrulePackage;

/** One measured goal. `value` is a ratio inside one run, so it holds on a slow machine as on a fast one. */
const BATCHES = 10_000;
/** rrule is so slow that a part is timed and multiplied. */
const RRULE_BATCHES = 200;
const ROUNDS = 9;
/** Expanding takes a few milliseconds, too short for the CPU clock; it is done this often in a row and divided. */
const EXPANSIONS = 10;
const DAY_IN_MILLISECONDS = 86_400_000;
const METHODS = ['larva-grafting', 'cut-comb-edge', 'caged-laying-plugs'] as const;
const BUILDERS = ['queenless', 'starter-then-finisher', 'divider-board'] as const;

/** The calendar's goals: paired rounds in one process, CPU time, medians of ratios, and the same days from each. */
export async function calendarGoals(): Promise<readonly Goal[]> {
  const batches = manyBatches();
  const timetables = batches.map(planOrThrow);
  const store = openStore();
  try {
    const expandOnce = () => expandBatches(batches);
    const expand = () => Array.from({ length: EXPANSIONS }, expandOnce).at(-1);
    const plan = () => batches.map(planOrThrow);
    const dateFns = () => expandWithDateFns(timetables);
    const rrule = () => expandWithRrule(timetables.slice(0, RRULE_BATCHES));
    const save = () => store.save(timetables);
    const rounds = Array.from({ length: ROUNDS + 1 }, (_, round) =>
      pairedRound(round % 2 === 0, { expand, plan, dateFns, rrule, save }),
    ).slice(1);
    const median = (ratio: (times: Times) => number) => medianOf(rounds.map(ratio));
    const sameDays = daysAgree(expandOnce(), timetables, dateFns(), rrule());
    return [
      atLeast(
        'calendar-date-fns',
        'expanding 10,000 batches, against date-fns addDays',
        5,
        sameDays,
        median(({ expand, dateFns }) => dateFns / expand),
      ),
      atLeast(
        'calendar-rrule',
        'expanding 10,000 batches, against one rrule per step',
        150,
        sameDays,
        median(({ expand, rrule }) => (rrule * BATCHES) / RRULE_BATCHES / expand),
      ),
      atMost(
        'calendar-store',
        'deriving the calendar of 10,000 batches, as a share of storing its steps',
        0.05,
        sameDays,
        median(({ expand, save }) => expand / save),
      ),
      atMost(
        'calendar-plan',
        'planning 10,000 whole timetables with texts and sources, against date-fns addDays alone',
        1,
        sameDays,
        median(({ plan, dateFns }) => plan / dateFns),
      ),
    ];
  } finally {
    store.close();
  }
}

export const goals = calendarGoals;

type Work = 'expand' | 'plan' | 'dateFns' | 'rrule' | 'save';
type Times = Readonly<Record<Work, number>>;

/** Runs each piece of work once, in turn or in reverse turn, and gives its CPU milliseconds. */
function pairedRound(forward: boolean, work: Readonly<Record<Work, () => unknown>>): Times {
  const order: readonly Work[] = ['expand', 'dateFns', 'rrule', 'save', 'plan'];
  const times: Record<Work, number> = { expand: 0, plan: 0, dateFns: 0, rrule: 0, save: 0 };
  for (const name of forward ? order : order.toReversed()) times[name] = cpuMilliseconds(work[name]);
  return { ...times, expand: times.expand / EXPANSIONS };
}

let kept: unknown;
function cpuMilliseconds(work: () => unknown): number {
  const before = process.cpuUsage();
  kept = work();
  const { user, system } = process.cpuUsage(before);
  if (kept === null) throw new Error('nothing was computed');
  return (user + system) / 1000;
}

function manyBatches(): readonly BatchInput[] {
  const first = dayOfIso('2026-01-01');
  return Array.from({ length: BATCHES }, (_, index): BatchInput => {
    const method = METHODS[index % METHODS.length] ?? 'larva-grafting';
    const builderType = BUILDERS[Math.floor(index / 3) % BUILDERS.length] ?? 'queenless';
    return {
      id: `batch-${index}`,
      input: {
        method,
        comb: 'drawn',
        builderType,
        boxType: index % 2 === 0 ? 'mini' : null,
        anchor: { step: 'give-larvae', on: addDays(first, (index * 7) % 7300) },
        larvaAgeHours: null,
        sealedStageCelsius: null,
        seen: [],
        done: [],
        moved: [],
      },
    };
  });
}

function planOrThrow({ input }: BatchInput): Timetable {
  const planned = planTimetable(input);
  if (!planned.ok) throw new Error(planned.refusal.kind);
  return planned.value;
}

interface DateSpan {
  readonly step: string;
  readonly earliest: Date;
  readonly expected: Date;
  readonly latest: Date;
}

const dateOf = (day: Day): Date => new Date(day * DAY_IN_MILLISECONDS);

/** The peer: the same offsets, known beforehand, added with date-fns. */
function expandWithDateFns(timetables: readonly Timetable[]): readonly (readonly DateSpan[])[] {
  return timetables.map(({ larvaeGivenOn, steps }) => {
    const zero = dateOf(larvaeGivenOn);
    return steps.map(({ step, earliest, expected, latest }) => ({
      step,
      earliest: addDaysOfDateFns(zero, earliest - larvaeGivenOn),
      expected: addDaysOfDateFns(zero, expected - larvaeGivenOn),
      latest: addDaysOfDateFns(zero, latest - larvaeGivenOn),
    }));
  });
}

/** The peer as a calendar library allows it: one rule per step. Windows are left out, in the peer's favour. */
function expandWithRrule(timetables: readonly Timetable[]): readonly (readonly Date[])[] {
  return timetables.map(({ larvaeGivenOn, steps }) =>
    steps.map(({ expected }) => {
      const days = Math.abs(expected - larvaeGivenOn);
      const from = expected < larvaeGivenOn ? dateOf(expected) : dateOf(larvaeGivenOn);
      const rule = new RRule({ freq: RRule.DAILY, interval: days || 1, dtstart: from, count: 2 });
      return rule.all()[expected > larvaeGivenOn ? 1 : 0] ?? from;
    }),
  );
}

/** Whether all four ways come to the same days. */
function daysAgree(
  { days }: ExpandedBatches,
  timetables: readonly Timetable[],
  dateFns: readonly (readonly DateSpan[])[],
  rrule: readonly (readonly Date[])[],
): boolean {
  const planned = timetables.flatMap(({ steps }) =>
    steps.flatMap((step) => [step.earliest, step.expected, step.latest]),
  );
  const ofDateFns = dateFns.flat().flatMap((span) => [span.earliest, span.expected, span.latest]);
  const expectedDays = timetables.slice(0, RRULE_BATCHES).flatMap(({ steps }) => steps.map((step) => step.expected));
  return (
    planned.length === days.length &&
    planned.every((day, index) => day === days[index]) &&
    ofDateFns.length === planned.length &&
    ofDateFns.every((date, index) => +date === (planned[index] ?? 0) * DAY_IN_MILLISECONDS) &&
    rrule.flat().every((date, index) => +date === (expectedDays[index] ?? 0) * DAY_IN_MILLISECONDS)
  );
}

/** What storing the steps instead would cost: a table with the columns a page needs, one transaction, on disk. */
function openStore() {
  const folder = mkdtempSync(join(tmpdir(), 'calendar-bench-'));
  const database = new Database(join(folder, 'steps.db'));
  database.pragma('journal_mode = WAL');
  database.exec(
    'CREATE TABLE step (batch TEXT, step TEXT, earliest TEXT, expected TEXT, latest TEXT, time_of_day TEXT, hardness TEXT) STRICT',
  );
  const insert = database.prepare('INSERT INTO step VALUES (?, ?, ?, ?, ?, ?, ?)');
  const save = database.transaction((timetables: readonly Timetable[]) => {
    database.exec('DELETE FROM step');
    timetables.forEach(({ steps }, index) => {
      for (const { step, earliest, expected, latest, timeOfDay, hardness } of steps) {
        insert.run(
          `batch-${index}`,
          step,
          isoOfDay(earliest),
          isoOfDay(expected),
          isoOfDay(latest),
          timeOfDay,
          hardness,
        );
      }
    });
  });
  return {
    save: (timetables: readonly Timetable[]) => save(timetables) ?? true,
    close: () => {
      database.close();
      rmSync(folder, { recursive: true });
    },
  };
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

const rounded = (value: number): number => Number(value.toPrecision(3));

const atLeast = (id: string, what: string, least: number, sameDays: boolean, value: number): Goal => ({
  id,
  what: sameDays ? what : `${what} (the days differ)`,
  value: rounded(value),
  goal: `>= ${least}`,
  ok: sameDays && value >= least,
});

const atMost = (id: string, what: string, most: number, sameDays: boolean, value: number): Goal => ({
  id,
  what: sameDays ? what : `${what} (the days differ)`,
  value: rounded(value),
  goal: `<= ${most}`,
  ok: sameDays && value <= most,
});
