import { describe, expect, it } from 'vitest';
import { findClashes } from '../../../../main/engine/calendar/find-clashes.ts';
import type { PlannedBatch, PlanningRules } from '../../../../shared/model/clash.ts';
import type { CalendarInput } from '../../../../shared/model/timetable.ts';
import { day, timetableOf } from '../../../builders/calendar.ts';

const aPlannedBatch = (
  id: string,
  givenOn: string,
  changes: Partial<PlannedBatch> = {},
  input: Partial<CalendarInput> = {},
): PlannedBatch => ({
  id,
  timetable: timetableOf({ anchor: { step: 'give-larvae', on: day(givenOn) }, ...input }),
  builderId: `builder-of-${id}`,
  breederId: null,
  cells: 10,
  barIds: [],
  ...changes,
});
const RULES: PlanningRules = {
  awayDays: new Set(),
  workWeekdays: [],
  cellsPerBuilder: 20,
  seasonFactor: 1,
  builderRestDays: 4,
  dronesMatureFrom: null,
};
const boxes = (count: number, freeFrom: string) =>
  Array.from({ length: count }, (_, index) => ({ id: `K${index + 1}`, freeFrom: day(freeFrom) }));
const ENOUGH = boxes(100, '2026-01-01');
const kinds = (...args: Parameters<typeof findClashes>) => findClashes(...args).map((clash) => clash.kind);

describe('findClashes', () => {
  it('finds nothing in a plan that works', () => {
    expect(findClashes([aPlannedBatch('a', '2026-05-10'), aPlannedBatch('b', '2026-05-12')], ENOUGH, RULES)).toEqual(
      [],
    );
  });

  it('names a builder that still holds cells, with the day it is free', () => {
    // a: cells leave on 20 May, four days of rest, free on 25 May. b: queenless from 23 May.
    const batches = [
      aPlannedBatch('b', '2026-05-24', { builderId: 'H12' }),
      aPlannedBatch('a', '2026-05-10', { builderId: 'H12' }),
    ];
    expect(findClashes(batches, ENOUGH, RULES)).toEqual([
      {
        kind: 'builder-busy',
        batch: 'b',
        other: 'a',
        builderId: 'H12',
        on: day('2026-05-23'),
        holdsUntil: day('2026-05-20'),
        freeFrom: day('2026-05-25'),
      },
    ]);
    const later = [
      aPlannedBatch('b', '2026-05-26', { builderId: 'H12' }),
      aPlannedBatch('a', '2026-05-10', { builderId: 'H12' }),
    ];
    expect(findClashes(later, ENOUGH, RULES)).toEqual([]);
  });

  it('says nothing of builders that are not known', () => {
    const batches = [
      aPlannedBatch('a', '2026-05-10', { builderId: null }),
      aPlannedBatch('b', '2026-05-10', { builderId: null, cells: 90 }),
    ];
    expect(findClashes(batches, ENOUGH, RULES)).toEqual([]);
  });

  it('warns above 20 cells in one builder and says how many are needed', () => {
    // 20 cells to a builder: de Bruyn 2015, Bee Craft; Hamdan, notes on rearing queens.
    expect(findClashes([aPlannedBatch('a', '2026-05-10', { cells: 36 })], ENOUGH, RULES)).toMatchObject([
      { kind: 'too-many-cells', usualMost: 20, builders: 2 },
    ]);
    expect(findClashes([aPlannedBatch('a', '2026-05-10', { cells: 20 })], ENOUGH, RULES)).toEqual([]);
    expect(kinds([aPlannedBatch('a', '2026-05-10', { cells: 20 })], ENOUGH, { ...RULES, seasonFactor: 0.5 })).toEqual([
      'too-many-cells',
    ]);
  });

  it('counts ripe cells of all batches against boxes free on the placing day', () => {
    const batches = [aPlannedBatch('a', '2026-05-10'), aPlannedBatch('b', '2026-05-10')];
    expect(findClashes(batches, boxes(15, '2026-05-19'), RULES)).toEqual([
      {
        kind: 'too-few-boxes',
        on: day('2026-05-20'),
        batches: ['a', 'b'],
        cells: 20,
        freeBoxes: 15,
        deadline: day('2026-05-20'),
        freeByDeadline: 15,
        boxes: 15,
      },
    ]);
    expect(findClashes(batches, boxes(20, '2026-05-20'), RULES)).toEqual([]);
    expect(kinds(batches, boxes(20, '2026-05-21'), RULES)).toEqual(['too-few-boxes']);
  });

  it('does not count a box twice when one batch follows another', () => {
    const batches = [aPlannedBatch('a', '2026-05-10'), aPlannedBatch('b', '2026-05-15')];
    expect(kinds(batches, boxes(15, '2026-05-01'), RULES)).toEqual(['too-few-boxes']);
    expect(kinds(batches, boxes(20, '2026-05-01'), RULES)).toEqual([]);
  });

  it('says nothing of cells that were not counted or planned', () => {
    expect(findClashes([aPlannedBatch('a', '2026-05-10', { cells: null })], [], RULES)).toEqual([]);
  });

  it('names a bar that holds two ages', () => {
    const batches = [
      aPlannedBatch('a', '2026-05-10', { barIds: ['bar-1', 'bar-2'] }),
      aPlannedBatch('b', '2026-05-11', { barIds: ['bar-2'] }),
    ];
    expect(findClashes(batches, ENOUGH, RULES)).toMatchObject([{ kind: 'ages-mixed-on-bar', barId: 'bar-2' }]);
    const sameDay = [
      aPlannedBatch('a', '2026-05-10', { barIds: ['bar-1'] }),
      aPlannedBatch('b', '2026-05-10', { barIds: ['bar-1'] }),
    ];
    expect(findClashes(sameDay, ENOUGH, RULES)).toEqual([]);
  });

  it('flags a must-step on an away day with the days that would do', () => {
    const away = { ...RULES, awayDays: new Set([day('2026-05-20')]) };
    expect(findClashes([aPlannedBatch('a', '2026-05-10')], ENOUGH, away)).toEqual([
      {
        kind: 'must-step-away',
        batch: 'a',
        step: 'place-cells',
        on: day('2026-05-20'),
        reason: 'away',
        suits: [day('2026-05-19')],
      },
    ]);
  });

  it('flags a must-step on a weekday that does not suit; a should-step is left alone', () => {
    // 10 May 2026 is a Sunday, 9 May a Saturday (the builder), 20 May a Wednesday.
    const weekend = { ...RULES, workWeekdays: [6, 7] };
    expect(findClashes([aPlannedBatch('a', '2026-05-10')], ENOUGH, weekend)).toMatchObject([
      { kind: 'must-step-away', step: 'place-cells', reason: 'weekday', suits: [] },
    ]);
  });

  it('is quiet about must-steps that are done', () => {
    const done = [{ step: 'place-cells', on: day('2026-05-20') }] as const;
    const away = { ...RULES, awayDays: new Set([day('2026-05-20')]) };
    expect(findClashes([aPlannedBatch('a', '2026-05-10', {}, { done })], ENOUGH, away)).toEqual([]);
  });

  it('warns when queens fly before the first mature drones', () => {
    // Büchler et al. 2013, section 2.2.3, reckoned: drone eggs of 17 April are mature on 27 May, day 5 of queens given on 10 May.
    const justInTime = { ...RULES, dronesMatureFrom: day('2026-05-27') };
    expect(findClashes([aPlannedBatch('a', '2026-05-10')], ENOUGH, justInTime)).toEqual([]);
    const late = { ...RULES, dronesMatureFrom: day('2026-05-30') };
    expect(findClashes([aPlannedBatch('a', '2026-05-10')], ENOUGH, late)).toEqual([
      {
        kind: 'no-drones-yet',
        batch: 'a',
        fliesFrom: day('2026-05-27'),
        dronesMatureFrom: day('2026-05-30'),
        daysLater: 3,
      },
    ]);
  });
});
