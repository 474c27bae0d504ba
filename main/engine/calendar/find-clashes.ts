import { MATING_DAYS } from '../../../shared/biology/flight-weather.ts';
import { addDays, type Day, earlierOf } from '../../../shared/kernel/day.ts';
import type { Clash, PlannedBatch, PlannedBox, PlanningRules } from '../../../shared/model/clash.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import type { Timetable } from '../../../shared/model/timetable.ts';
import { dayTrouble, suitingDays } from './day-suits.ts';
import { jobsInHandsOff } from './jobs-in-hands-off.ts';
import { isOpen, isOpenJob } from './open-steps.ts';

/**
 * Everything in a set of running and planned batches that cannot go as planned. Each clash names its dates and what
 * would resolve it. By kind in the order of `CHECKS`, then by the order of the batches.
 */
export function findClashes(
  batches: readonly PlannedBatch[],
  boxes: readonly PlannedBox[],
  rules: PlanningRules,
): readonly Clash[] {
  return CHECKS.flatMap((check) => check(batches, boxes, rules));
}

type Check = (batches: readonly PlannedBatch[], boxes: readonly PlannedBox[], rules: PlanningRules) => readonly Clash[];

/** Days on which a builder holds the cells of a batch, and until when it then rests. */
export function builderUse({ timetable }: Pick<PlannedBatch, 'timetable'>, restDays: number) {
  const holdsUntil = dayOf(timetable, 'place-cells') ?? timetable.placeDeadline;
  return { from: openingDay(timetable), holdsUntil, freeFrom: addDays(holdsUntil, restDays + 1) };
}

/** A builder is taken from the day it is made queenless, or gets its larvae, whichever comes first. */
function openingDay(timetable: Timetable): Day {
  const ready = dayOf(timetable, 'make-queenless');
  return ready !== null && ready < timetable.larvaeGivenOn ? ready : timetable.larvaeGivenOn;
}

const busyBuilders: Check = (batches, _boxes, { builderRestDays }) =>
  pairs(batches).flatMap(([one, other]): readonly Clash[] => {
    if (one.builderId === null || one.builderId !== other.builderId) return [];
    const [first, second] = one.timetable.larvaeGivenOn <= other.timetable.larvaeGivenOn ? [one, other] : [other, one];
    const use = builderUse(first, builderRestDays);
    const on = builderUse(second, builderRestDays).from;
    if (on >= use.freeFrom) return [];
    const { holdsUntil, freeFrom } = use;
    return [
      { kind: 'builder-busy', batch: second.id, other: first.id, builderId: one.builderId, on, holdsUntil, freeFrom },
    ];
  });

/** How many cells a builder is given at the most now; in a dearth fewer than usual. */
export const usualMostCells = ({ cellsPerBuilder, seasonFactor }: PlanningRules): number =>
  Math.max(1, Math.floor(cellsPerBuilder * seasonFactor));

const crowdedBuilders: Check = (batches, _boxes, rules) => {
  const usualMost = usualMostCells(rules);
  return batches.flatMap(({ id, builderId, cells }): readonly Clash[] =>
    builderId !== null && cells !== null && cells > usualMost
      ? [{ kind: 'too-many-cells', batch: id, builderId, cells, usualMost, builders: Math.ceil(cells / usualMost) }]
      : [],
  );
};

const missingBoxes: Check = (batches, boxes) => {
  const placing = batches.flatMap((batch) => {
    const step = stepOf(batch.timetable, 'place-cells');
    return step && isOpen(step) && batch.cells !== null ? [{ ...batch, cells: batch.cells, step }] : [];
  });
  const days = [...new Set(placing.map(({ step }) => step.expected))].toSorted((a, b) => a - b);
  return days.flatMap((on): readonly Clash[] => {
    // Boxes filled on an earlier placing day are gone by now.
    const earlier = sum(placing.filter(({ step }) => step.expected < on).map(({ cells }) => cells));
    const today = placing.filter(({ step }) => step.expected === on);
    const cells = sum(today.map((batch) => batch.cells));
    const freeBoxes = Math.max(0, freeOn(boxes, on) - earlier);
    if (cells <= freeBoxes) return [];
    const deadline = today.map(({ timetable }) => timetable.placeDeadline).reduce(earlierOf);
    const freeByDeadline = Math.max(0, freeOn(boxes, deadline) - earlier);
    return [
      {
        kind: 'too-few-boxes',
        on,
        batches: today.map(({ id }) => id),
        cells,
        freeBoxes,
        deadline,
        freeByDeadline,
        boxes: boxes.length,
      },
    ];
  });
};

const mixedBars: Check = (batches) =>
  pairs(batches).flatMap(([one, other]) =>
    one.timetable.larvaeGivenOn === other.timetable.larvaeGivenOn
      ? []
      : one.barIds
          .filter((barId) => other.barIds.includes(barId))
          .map(
            (barId): Clash => ({
              kind: 'ages-mixed-on-bar',
              barId,
              batch: one.id,
              other: other.id,
              on: one.timetable.larvaeGivenOn,
              otherOn: other.timetable.larvaeGivenOn,
            }),
          ),
  );

const awayDays: Check = (batches, _boxes, rules) =>
  batches.flatMap(({ id, timetable }) =>
    timetable.steps.filter(isOpenMust).flatMap((step): readonly Clash[] => {
      const reason = dayTrouble(step.expected, rules);
      if (reason === null) return [];
      const suits = suitingDays(step.earliest, step.latest, rules);
      return [{ kind: 'must-step-away', batch: id, step: step.step, on: step.expected, reason, suits }];
    }),
  );

const missingDrones: Check = (batches, _boxes, { dronesMatureFrom }) =>
  batches.flatMap(({ id, timetable }): readonly Clash[] => {
    const fliesFrom = firstFlights(timetable);
    if (dronesMatureFrom === null || fliesFrom >= dronesMatureFrom) return [];
    return [{ kind: 'no-drones-yet', batch: id, fliesFrom, dronesMatureFrom, daysLater: dronesMatureFrom - fliesFrom }];
  });

const CHECKS: readonly Check[] = [
  busyBuilders,
  crowdedBuilders,
  missingBoxes,
  mixedBars,
  awayDays,
  jobsInHandsOff,
  missingDrones,
];

/** First normal mating flights, 5 days after the expected emergence. */
export const firstFlights = (timetable: Timetable): Day =>
  addDays(timetable.emergence.expected, MATING_DAYS.flightsFrom.value);

export const isOpenMust = (step: DatedStep): boolean => isOpenJob(step) && step.hardness === 'must';

const freeOn = (boxes: readonly PlannedBox[], day: Day): number =>
  boxes.filter(({ freeFrom }) => freeFrom !== null && freeFrom <= day).length;

const stepOf = (timetable: Timetable, step: Step): DatedStep | undefined =>
  timetable.steps.find((one) => one.step === step);

const dayOf = (timetable: Timetable, step: Step): Day | null => stepOf(timetable, step)?.expected ?? null;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

function pairs<Item>(items: readonly Item[]): readonly (readonly [Item, Item])[] {
  return items.flatMap((one, index) => items.slice(index + 1).map((other): readonly [Item, Item] => [one, other]));
}
