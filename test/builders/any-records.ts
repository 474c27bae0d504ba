import fc from 'fast-check';
import type { Tables } from '../../main/workbook/workbook.ts';
import type { Day } from '../../shared/kernel/day.ts';
import { isoOfDay } from '../../shared/kernel/day.ts';
import { Bar, Batch, COUNTED_STAGES, Count, StepDone, StepDrop, StepMove } from '../../shared/model/batch.ts';
import { CALENDAR_ALARMS, CalendarExport } from '../../shared/model/calendar-export.ts';
import { Colony, ColonyRole, ROLES } from '../../shared/model/colony.ts';
import { FEEDS, Feeding } from '../../shared/model/feeding.ts';
import { FOLLOW_UPS, FollowUp } from '../../shared/model/follow-up.ts';
import { FOLLOW_UP_ANSWERS } from '../../shared/model/follow-up-answer.ts';
import { ColonyMove, Treatment } from '../../shared/model/hive-record.ts';
import { LabelPrint } from '../../shared/model/label-print.ts';
import { BoxLook, HiveLook, LOOK_RESULTS } from '../../shared/model/look.ts';
import { LOSS_REASONS, LOSS_STAGES, Loss } from '../../shared/model/loss.ts';
import { MatingBox, PLACEMENT_ENDS, Placement } from '../../shared/model/mating-box.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../shared/model/method.ts';
import { MethodCopy } from '../../shared/model/method-copy.ts';
import { Observation } from '../../shared/model/observation.ts';
import { QUEEN_PLACES, Queen } from '../../shared/model/queen.ts';
import { QueenPromise } from '../../shared/model/queen-promise.ts';
import { FEEDBACK_OUTCOMES, INTRODUCTION_WAYS, QueenFeedback, QueenMove } from '../../shared/model/queen-story.ts';
import { OBSERVATION_KINDS, STEPS } from '../../shared/model/step.ts';
import { STOCK_TESTS, STOCK_TRAITS, StockScore, StockTest } from '../../shared/model/stock.ts';
import { WeatherDay } from '../../shared/model/weather.ts';
import { Wish } from '../../shared/model/wish.ts';
import { Yard } from '../../shared/model/yard.ts';
import { aBar, aBatch } from './batch.ts';
import { aColony } from './colony.ts';
import { aDesk, fill } from './desk.ts';
import { aBox, aPlacement } from './mating-box.ts';
import { aQueen } from './queen.ts';

// Whole signs only: a lone half of a surrogate pair is no text, and UTF-8 cannot hold one.
export const text = (maxLength: number, minLength = 0) =>
  fc
    .string({ unit: 'grapheme', minLength, maxLength })
    .map((raw) => raw.slice(0, maxLength).trim())
    .filter((t) => t.isWellFormed() && t.length >= minLength);
export const maybe = <Value>(some: fc.Arbitrary<Value>) => fc.option(some, { nil: null });
const isoDay = fc.integer({ min: 0, max: 47_846 }).map((day) => isoOfDay(day as Day)); // 1970 to 2100
const hours = fc.double({ min: 0, max: 400, noNaN: true }).map((value) => value + 0);
export const count = fc.integer({ min: 0, max: 200 });
const five = maybe(fc.integer({ min: 1, max: 5 }));
const season = fc.integer({ min: 1950, max: 2200 });
const id = fc.stringMatching(/^[A-Za-z0-9_-]{1,64}$/).filter((value) => value.length <= 64);
const code = text(12, 1);
const name = text(60, 1);
const note = maybe(text(200));
export const given = <Value>(value: Value) => fc.constant(value);

/** For each table: records of every shape its schema allows, pointing to the rows that `aFilledDesk` holds. */
export const RECORDS = {
  yards: [Yard, fc.record({ id, name, note })],
  colonies: [
    Colony,
    fc.record({
      id,
      code,
      name: maybe(name),
      yardId: given(null),
      place: maybe(text(60)),
      motherLine: maybe(name),
      note,
      endedOn: maybe(isoDay),
    }),
  ],
  colonyRoles: [ColonyRole, fc.record({ id, colonyId: given('colony-1'), season, role: fc.constantFrom(...ROLES) })],
  methodCopies: [
    MethodCopy,
    fc.record({
      id,
      origin: fc.constantFrom(...METHODS),
      name,
      changes: fc.array(
        fc.record({
          step: fc.constantFrom(...STEPS),
          earliestDay: fc.integer({ min: -30, max: 60 }),
          expectedDay: fc.double({ min: 0.5, max: 60, noNaN: true }),
          latestDay: fc.integer({ min: -30, max: 60 }),
          title: maybe(name),
          note,
        }),
        { maxLength: 5 },
      ),
    }),
  ],
  batches: [
    Batch,
    fc.record({
      id,
      code,
      season,
      method: fc.constantFrom(...METHODS),
      methodCopyId: given(null),
      comb: maybe(fc.constantFrom(...COMBS)),
      builderType: fc.constantFrom(...BUILDER_TYPES),
      breederId: maybe(given('colony-1')),
      builderId: maybe(given('colony-1')),
      anchorStep: fc.constantFrom(...STEPS),
      anchorOn: isoDay,
      larvaAgeFromHours: maybe(fc.integer({ min: 0, max: 96 })),
      larvaAgeToHours: maybe(fc.integer({ min: 0, max: 96 })),
      sealedCelsius: maybe(fc.double({ min: 20, max: 40, noNaN: true })),
      cellsPlanned: maybe(count),
      practice: fc.boolean(),
      note,
      lesson: note,
      closedOn: maybe(isoDay),
    }),
  ],
  bars: [Bar, fc.record({ id, batchId: given('batch-1'), number: fc.integer({ min: 2, max: 99 }) })],
  counts: [
    Count,
    fc.record({
      id,
      batchId: given('batch-1'),
      barId: given('bar-1'),
      stage: fc.constantFrom(...COUNTED_STAGES),
      cells: count,
      countedOn: isoDay,
    }),
  ],
  stepsDone: [
    StepDone,
    fc.record({ id, batchId: given('batch-1'), step: fc.constantFrom(...STEPS), doneOn: isoDay, note }),
  ],
  stepMoves: [
    StepMove,
    fc.record({ id, batchId: given('batch-1'), step: fc.constantFrom(...STEPS), movedTo: isoDay, reason: text(200) }),
  ],
  stepDrops: [
    StepDrop,
    fc.record({ id, batchId: given('batch-1'), step: fc.constantFrom(...STEPS), droppedOn: isoDay, reason: text(200) }),
  ],
  losses: [
    Loss,
    fc.record({
      id,
      batchId: given('batch-1'),
      stage: fc.constantFrom(...LOSS_STAGES),
      reason: fc.constantFrom(...LOSS_REASONS),
      cells: fc.integer({ min: 1, max: 500 }),
    }),
  ],
  observations: [
    Observation,
    fc.record({
      id,
      batchId: given('batch-1'),
      what: fc.constantFrom(...OBSERVATION_KINDS),
      seenOn: isoDay,
      fromHours: maybe(hours),
      toHours: maybe(hours),
      note,
    }),
  ],
  boxes: [
    MatingBox,
    fc.record({
      id,
      code,
      yardId: given(null),
      row: maybe(text(30)),
      walkOrder: fc.integer({ min: 0, max: 100_000 }),
      boxType: fc.constantFrom(...BOX_TYPES),
      note,
      retiredOn: maybe(isoDay),
    }),
  ],
  placements: [
    Placement,
    fc.record({
      id,
      boxId: given('box-2'),
      batchId: given('batch-1'),
      barId: maybe(given('bar-1')),
      placedOn: isoDay,
      endedOn: maybe(isoDay),
      endReason: maybe(fc.constantFrom(...PLACEMENT_ENDS)),
    }),
  ],
  boxLooks: [
    BoxLook,
    fc.record({
      id,
      boxId: given('box-1'),
      placementId: maybe(given('placement-1')),
      lookedOn: isoDay,
      result: fc.constantFrom(...LOOK_RESULTS),
      strength: five,
      food: five,
      note,
    }),
  ],
  hiveLooks: [
    HiveLook,
    fc.record({ id, colonyId: given('colony-1'), lookedOn: isoDay, strength: five, food: five, note: text(200) }),
  ],
  queens: [
    Queen,
    fc.record({
      id,
      number: code,
      bornIn: season,
      placementId: maybe(given('placement-1')),
      batchId: maybe(given('batch-1')),
      breederId: maybe(given('colony-1')),
      motherId: given(null),
      motherLine: maybe(name),
      markedOn: maybe(isoDay),
      firstEggsOn: maybe(isoDay),
      provedOn: maybe(isoDay),
      place: fc.constantFrom(...QUEEN_PLACES),
      boxId: maybe(given('box-1')),
      colonyId: maybe(given('colony-1')),
      goneTo: maybe(name),
      note,
    }),
  ],
  calendarExports: [
    CalendarExport,
    fc.record({
      id: id.map((batch) => `${batch}.place-cells@ripecell`),
      batchId: id,
      sequence: fc.nat(),
      fromOn: isoDay,
      toOn: isoDay,
      summary: text(400),
      location: maybe(text(200)),
      category: text(60),
      alarm: fc.constantFrom(...CALENDAR_ALARMS),
      cancelled: fc.boolean(),
      exportedOn: isoDay,
    }),
  ],
  weather: [
    WeatherDay,
    fc.record({
      id,
      day: isoDay,
      maxCelsius: maybe(fc.integer({ min: -400, max: 550 }).map((tenths) => tenths / 10)),
      windKmh: maybe(fc.integer({ min: 0, max: 200 })),
      rain: maybe(fc.boolean()),
      flyingHours: maybe(fc.integer({ min: 0, max: 10 }).map((halves) => halves / 2)),
    }),
  ],
  wishes: [
    Wish,
    fc.record({
      id,
      forWhom: maybe(name),
      queens: fc.integer({ min: 1, max: 500 }),
      wantedOn: isoDay,
      settledOn: maybe(isoDay),
      note,
    }),
  ],
  queenMoves: [
    QueenMove,
    fc.record({
      id,
      queenId: given('queen-1'),
      movedOn: isoDay,
      place: fc.constantFrom(...QUEEN_PLACES),
      colonyId: maybe(given('colony-1')),
      goneTo: maybe(name),
      way: maybe(fc.constantFrom(...INTRODUCTION_WAYS)),
      price: maybe(text(30)),
      note,
    }),
  ],
  queenPromises: [
    QueenPromise,
    fc.record({
      id,
      queenId: given('queen-1'),
      promisedOn: isoDay,
      promisedTo: name,
      wantedOn: maybe(isoDay),
      note,
    }),
  ],
  queenFeedback: [
    QueenFeedback,
    fc.record({
      id,
      queenId: given('queen-1'),
      toldOn: isoDay,
      toldBy: maybe(name),
      outcome: fc.constantFrom(...FEEDBACK_OUTCOMES),
      note,
    }),
  ],
  followUps: [
    FollowUp,
    fc.record({
      id,
      what: fc.constantFrom(...FOLLOW_UPS),
      dueOn: isoDay,
      latestOn: isoDay,
      queenId: maybe(given('queen-1')),
      boxId: maybe(given('box-1')),
      colonyId: maybe(given('colony-1')),
      doneOn: maybe(isoDay),
      answer: maybe(fc.constantFrom(...FOLLOW_UP_ANSWERS)),
      note,
    }),
  ],
  stockScores: [
    StockScore,
    fc.record({
      id,
      colonyId: given('colony-1'),
      trait: fc.constantFrom(...STOCK_TRAITS),
      scoredOn: isoDay,
      score: fc.integer({ min: 2, max: 8 }).map((halves) => halves / 2),
      note,
    }),
  ],
  stockTests: [
    StockTest,
    fc.record({
      id,
      colonyId: given('colony-1'),
      kind: fc.constantFrom(...STOCK_TESTS),
      testedOn: isoDay,
      counted: fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10),
      outOf: maybe(count.map((value) => value + 1)),
      hours: maybe(count.map((value) => value + 0.5)),
      note,
    }),
  ],
  feedings: [
    Feeding,
    fc
      .record({
        id,
        hive: fc.boolean(),
        fedOn: isoDay,
        feed: fc.constantFrom(...FEEDS),
        name: text(60, 1),
        amount: maybe(fc.integer({ min: 1, max: 100_000 }).map((thousandths) => thousandths / 1000)),
        weighed: fc.boolean(),
        note,
      })
      .map(({ hive, name: own, amount, weighed, ...fed }) => ({
        ...fed,
        colonyId: hive ? 'colony-1' : null,
        boxId: hive ? null : 'box-1',
        ownFeed: fed.feed === 'other' ? own : null,
        litres: weighed ? null : amount,
        kilograms: weighed ? amount : null,
      })),
  ],
  treatments: [
    Treatment,
    fc.record({
      id,
      colonyId: given('colony-1'),
      fromOn: isoDay,
      toOn: maybe(isoDay),
      product: text(80, 1),
      amount: maybe(text(60)),
      reason: maybe(text(80)),
      paper: maybe(text(60)),
      note,
    }),
  ],
  colonyMoves: [
    ColonyMove,
    fc.record({
      id,
      colonyId: given('colony-1'),
      movedOn: isoDay,
      fromYardId: given(null),
      toYardId: given(null),
      place: maybe(text(60)),
      paper: maybe(text(60)),
      note,
    }),
  ],
  labelPrints: [LabelPrint, fc.record({ id, placementId: given('placement-1'), printedOn: isoDay, words: text(300) })],
} as const satisfies Partial<Record<keyof Tables, unknown>>;

/** A desk with one of each row that those records point to. */
export function aFilledDesk() {
  const desk = aDesk();
  fill(desk, ({ colonies, batches, bars, boxes, placements, queens }) => {
    queens.insert(aQueen({ number: 'first queen!' }));
    colonies.insert(aColony({ code: 'first colony' }));
    batches.insert(aBatch({ code: 'first batch!' }));
    bars.insert(aBar());
    boxes.insert(aBox({ code: 'first box' }));
    boxes.insert(aBox({ id: 'box-2', code: 'second box' }));
    placements.insert(aPlacement());
  });
  return desk;
}
