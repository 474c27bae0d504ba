import { z } from 'zod';
import { developmentClock } from '../../main/engine/calendar/development-clock.ts';
import { dronePlan } from '../../main/engine/calendar/drone-plan.ts';
import { planTimetable } from '../../main/engine/calendar/plan-timetable.ts';
import { CASTES } from '../../shared/biology/development.ts';
import { rateFlightDay } from '../../shared/biology/flight-weather.ts';
import { YEAR_COLOURS, yearColour } from '../../shared/biology/year-colour.ts';
import { hoursOfCivilTime } from '../../shared/kernel/civil-time.ts';
import { dayOfIso, isIsoDay, isoOfDay } from '../../shared/kernel/day.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../shared/model/method.ts';
import { OBSERVATION_KINDS, STEPS } from '../../shared/model/step.ts';
import type { CalendarInput, Timetable } from '../../shared/model/timetable.ts';
import { FLIGHT_RATINGS } from '../../shared/model/weather.ts';
import type { Failure, KindTable, Vector } from './vector.ts';

const IsoDay = z.string().refine(isIsoDay, 'not a calendar day');
const DayNumber = IsoDay.transform(dayOfIso);
const Hours = z.tuple([z.number(), z.number()]);
const StepOn = z.strictObject({ step: z.enum(STEPS), on: DayNumber });

const CalendarCase = z.strictObject({
  method: z.enum(METHODS),
  comb: z.enum(COMBS).nullish(),
  builderType: z.enum(BUILDER_TYPES).default('queenless'),
  boxType: z.enum(BOX_TYPES).nullish(),
  anchor: StepOn,
  larvaAgeHours: Hours.nullish(),
  sealedStageCelsius: z.number().nullish(),
  seen: z
    .array(
      z.strictObject({
        id: z.string().optional(),
        what: z.enum(OBSERVATION_KINDS),
        on: DayNumber,
        hours: Hours.nullish(),
      }),
    )
    .default([]),
  done: z.array(StepOn).default([]),
  moved: z.array(z.strictObject({ step: z.enum(STEPS), to: DayNumber, reason: z.string().default('') })).default([]),
  changes: z
    .array(
      z.strictObject({ step: z.enum(STEPS), earliestDay: z.number(), expectedDay: z.number(), latestDay: z.number() }),
    )
    .default([]),
});

/** What may be asked of one step; every part that is there is compared. */
const StepExpected = z
  .strictObject({
    expected: IsoDay,
    within: z.tuple([IsoDay, IsoDay]),
    earliest: IsoDay,
    latest: IsoDay,
    earliestNotAfter: IsoDay,
    latestNotBefore: IsoDay,
    absent: z.literal(true),
  })
  .partial()
  .refine((asked) => Object.keys(asked).length > 0, 'asks nothing');
type StepExpected = z.infer<typeof StepExpected>;
const TimetableExpected = z
  .partialRecord(z.enum(STEPS), StepExpected)
  .refine((asked) => Object.keys(asked).length > 0, 'asks nothing');

function inputOf(vector: Vector): CalendarInput {
  const given = CalendarCase.parse(vector.input);
  return {
    ...given,
    comb: given.comb ?? null,
    boxType: given.boxType ?? null,
    larvaAgeHours: given.larvaAgeHours ?? null,
    sealedStageCelsius: given.sealedStageCelsius ?? null,
    seen: given.seen.map((seen, index) => ({ ...seen, id: seen.id ?? `seen-${index + 1}` })),
  };
}

function checkCalendar(vector: Vector): readonly Failure[] {
  const planned = planTimetable(inputOf(vector));
  if (!planned.ok) return [`refused: ${planned.refusal.kind} (${planned.refusal.field})`];
  const asked = TimetableExpected.parse(vector.expected);
  return STEPS.flatMap((step) => {
    const wanted = asked[step];
    return wanted ? compareStep(step, wanted, planned.value) : [];
  });
}

function compareStep(step: string, wanted: StepExpected, timetable: Timetable): readonly Failure[] {
  const dated = timetable.steps.find((one) => one.step === step);
  if (wanted.absent) return dated ? [`${step} should not be in this timetable`] : [];
  if (!dated) return [`${step} is not in the timetable`];
  const got = {
    earliest: isoOfDay(dated.earliest),
    expected: isoOfDay(dated.expected),
    latest: isoOfDay(dated.latest),
  };
  const failures: Failure[] = [];
  for (const part of ['earliest', 'expected', 'latest'] as const) {
    const day = wanted[part];
    if (day !== undefined && got[part] !== day) failures.push(`${step} ${part} is ${got[part]}, not ${day}`);
  }
  if (wanted.within && (got.expected < wanted.within[0] || got.expected > wanted.within[1])) {
    failures.push(`${step} is ${got.expected}, not within ${wanted.within.join(' to ')}`);
  }
  if (wanted.earliestNotAfter && got.earliest > wanted.earliestNotAfter) {
    failures.push(`${step} earliest is ${got.earliest}, after ${wanted.earliestNotAfter}`);
  }
  if (wanted.latestNotBefore && got.latest < wanted.latestNotBefore) {
    failures.push(`${step} latest is ${got.latest}, before ${wanted.latestNotBefore}`);
  }
  return failures;
}

const RefusalExpected = z.strictObject({ refusal: z.string(), field: z.string() });

function checkRefusal(vector: Vector): readonly Failure[] {
  const wanted = RefusalExpected.parse(vector.expected);
  const planned = planTimetable(inputOf(vector));
  if (planned.ok) return [`was not refused; expected ${wanted.refusal}`];
  const { kind, field } = planned.refusal;
  return kind === wanted.refusal && field === wanted.field
    ? []
    : [`refused as ${kind} (${field}), not ${wanted.refusal} (${wanted.field})`];
}

const ClockCase = z.strictObject({
  caste: z.enum(CASTES),
  laidAt: z.string(),
  sealedStageCelsius: z.number().nullish(),
});
const ClockExpected = z
  .strictObject({ hatchesAt: z.string(), sealedAt: z.string(), emergesAt: z.string() })
  .partial()
  .refine((asked) => Object.keys(asked).length > 0, 'asks nothing');

function checkClock(vector: Vector): readonly Failure[] {
  const { caste, laidAt, sealedStageCelsius } = ClockCase.parse(vector.input);
  const times = developmentClock(caste, hoursOfCivilTime(laidAt), sealedStageCelsius ?? null);
  const tolerance = vector.toleranceHours ?? 0;
  return Object.entries(ClockExpected.parse(vector.expected)).flatMap(([part, text]) => {
    if (part !== 'hatchesAt' && part !== 'sealedAt' && part !== 'emergesAt') return [`no such part: ${part}`];
    const off = times[part] - hoursOfCivilTime(text);
    return Math.abs(off) <= tolerance
      ? []
      : [`${part} is ${off.toFixed(1)} hours from ${text}, more than ${tolerance}`];
  });
}

function checkDrones(vector: Vector): readonly Failure[] {
  const { matingFrom } = z.strictObject({ matingFrom: DayNumber }).parse(vector.input);
  const wanted = z.strictObject({ layLatest: IsoDay, combInAdvised: IsoDay }).parse(vector.expected);
  const plan = dronePlan(matingFrom);
  const got = { layLatest: isoOfDay(plan.layLatest), combInAdvised: isoOfDay(plan.combInAdvised) };
  return [
    ...differs('layLatest', got.layLatest, wanted.layLatest),
    ...differs('combInAdvised', got.combInAdvised, wanted.combInAdvised),
  ];
}

function checkYearColour(vector: Vector): readonly Failure[] {
  const { year } = z.strictObject({ year: z.int() }).parse(vector.input);
  const { colour } = z.strictObject({ colour: z.enum(YEAR_COLOURS) }).parse(vector.expected);
  return differs('colour', yearColour(year), colour);
}

function checkFlightDay(vector: Vector): readonly Failure[] {
  const weather = z
    .strictObject({ maxCelsius: z.number().nullable(), windKmh: z.number().nullable(), sun: z.boolean().nullable() })
    .parse(vector.input);
  const { rating } = z.strictObject({ rating: z.enum(FLIGHT_RATINGS) }).parse(vector.expected);
  return differs('rating', rateFlightDay(weather), rating);
}

const differs = (what: string, got: string, wanted: string): readonly Failure[] =>
  got === wanted ? [] : [`${what} is ${got}, not ${wanted}`];

export const calendarKinds: KindTable = {
  calendar: checkCalendar,
  'calendar-refusal': checkRefusal,
  clock: checkClock,
  drones: checkDrones,
  'year-colour': checkYearColour,
  'flight-day': checkFlightDay,
};
