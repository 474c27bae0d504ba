import { describe, expect, it, test } from 'vitest';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { methodTable } from '../../../../shared/biology/method-steps.ts';
import { addDays, isoOfDay } from '../../../../shared/kernel/day.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../../../shared/model/method.ts';
import { aCalendarInput, aSighting, day, stepOf, timetableOf } from '../../../builders/calendar.ts';

const expectedOn = (...args: Parameters<typeof stepOf>) => isoOfDay(stepOf(...args).expected);

describe('a grafted batch on 10 May 2026', () => {
  // Büchler et al. 2013 and the timetable at dave-cushman.net.
  const timetable = timetableOf();

  it.each([
    ['count-taken', '2026-05-11'],
    ['count-sealed', '2026-05-15'],
    ['place-cells', '2026-05-20'],
    ['emergence', '2026-05-22'],
    ['first-look', '2026-06-03'],
    ['late-warning', '2026-06-12'],
    ['give-up', '2026-06-19'],
  ] as const)('has %s on %s', (step, on) => {
    expect(expectedOn(timetable, step)).toBe(on);
  });

  it('leaves the cells alone on days 6 to 8 and the boxes on days 15 to 22', () => {
    expect(timetable.handsOff.map(({ place, from, to }) => [place, isoOfDay(from), isoOfDay(to)])).toEqual([
      ['builder', '2026-05-16', '2026-05-18'],
      ['boxes', '2026-05-25', '2026-06-01'],
    ]);
  });

  it('puts the last safe day for moving cells half a day before the earliest queen', () => {
    expect(isoOfDay(timetable.emergence.earliest)).toBe('2026-05-21');
    expect(isoOfDay(timetable.placeDeadline)).toBe('2026-05-20');
  });

  it('lists its steps in calendar order, each once, with a source', () => {
    const days = timetable.steps.map((step) => step.expected);
    expect(days).toEqual(days.toSorted((a, b) => a - b));
    expect(new Set(timetable.steps.map((step) => step.step)).size).toBe(timetable.steps.length);
    expect(timetable.steps.filter((step) => step.source.length < 10)).toEqual([]);
  });

  it('says that it rests on the day the larvae were given', () => {
    expect(timetable.reckonedFrom).toEqual({ kind: 'step', step: 'give-larvae', on: day('2026-05-10') });
  });
});

describe('every method with every builder and every box', () => {
  const choices = METHODS.flatMap((method) =>
    BUILDER_TYPES.flatMap((builderType) =>
      [null, ...BOX_TYPES].flatMap((boxType) => COMBS.map((comb) => ({ method, builderType, boxType, comb }))),
    ),
  );

  it('has a timetable with one emergence and a deadline before it', () => {
    const wrong = choices.filter((choice) => {
      const step = methodTable(choice.method, choice.comb).fixedBy[0] ?? 'give-larvae';
      const timetable = timetableOf({ ...choice, anchor: { step, on: day('2026-05-10') }, larvaAgeHours: null });
      const emergences = timetable.steps.filter((one) => one.step === 'emergence');
      return emergences.length !== 1 || timetable.placeDeadline !== timetable.emergence.earliest - 1;
    });
    expect(wrong).toEqual([]);
  });

  it('adds the steps of the builder only where a person gives larvae', () => {
    const swarm = timetableOf({
      method: 'swarm-cells',
      builderType: 'divider-board',
      anchor: { step: 'sealed', on: day('2026-05-10') },
    });
    expect(swarm.steps.map((step) => step.step)).not.toContain('open-divider');
    const grafted = timetableOf({ builderType: 'divider-board' });
    expect(grafted.steps.map((step) => step.step)).toContain('open-divider');
  });
});

describe('steps that were done', () => {
  it('stay on their day whatever is seen later', () => {
    const done = [{ step: 'count-taken', on: day('2026-05-12') }] as const;
    const plain = timetableOf({ done });
    const moved = timetableOf({
      done,
      larvaAgeHours: [12, 72],
      seen: [aSighting({ what: 'larva-age-note', on: day('2026-05-10'), hours: [48, 60] })],
    });
    for (const timetable of [plain, moved]) {
      const step = stepOf(timetable, 'count-taken');
      expect([step.earliest, step.expected, step.latest, step.doneOn]).toEqual(Array(4).fill(day('2026-05-12')));
    }
    expect(moved.emergence.earliest).toBeLessThan(plain.emergence.earliest);
  });

  it('carry the later steps with them: larvae given a day late', () => {
    const anchor = { step: 'insert-frame', on: day('2026-05-01') } as const;
    const changes = { method: 'cut-comb-edge', comb: 'drawn', anchor, larvaAgeHours: null } as const;
    const planned = timetableOf(changes);
    const late = timetableOf({ ...changes, done: [{ step: 'give-larvae', on: day('2026-05-06') }] });
    expect(late.larvaeGivenOn - planned.larvaeGivenOn).toBe(1);
    expect(stepOf(late, 'first-look').expected - stepOf(planned, 'first-look').expected).toBe(1);
  });

  it('placed cells decide when the boxes are set out, emerged queens decide the rest', () => {
    const placed = timetableOf({ done: [{ step: 'place-cells', on: day('2026-05-19') }] });
    expect(expectedOn(placed, 'set-out')).toBe('2026-05-22');
    const emerged = timetableOf({ done: [{ step: 'emergence', on: day('2026-05-21') }] });
    expect(expectedOn(emerged, 'first-look')).toBe('2026-06-02');
  });
});

describe('a job put on another day by the person', () => {
  it('is expected there and its window reaches that far', () => {
    const timetable = timetableOf({ moved: [{ step: 'first-look', to: day('2026-06-10'), reason: 'away' }] });
    const step = stepOf(timetable, 'first-look');
    expect([isoOfDay(step.earliest), isoOfDay(step.expected), isoOfDay(step.latest)]).toEqual([
      '2026-06-01',
      '2026-06-10',
      '2026-06-10',
    ]);
  });

  it('moves everything when it is the giving of larvae', () => {
    const timetable = timetableOf({ moved: [{ step: 'give-larvae', to: day('2026-05-13'), reason: 'rain' }] });
    expect(timetable.larvaeGivenOn).toBe(day('2026-05-13'));
    expect(expectedOn(timetable, 'emergence')).toBe('2026-05-25');
  });

  it('never moves the deadline', () => {
    const timetable = timetableOf({ moved: [{ step: 'place-cells', to: day('2026-05-25'), reason: 'away' }] });
    expect(isoOfDay(timetable.placeDeadline)).toBe('2026-05-20');
  });
});

describe("a person's copy of a method", () => {
  it('has its own days', () => {
    const timetable = timetableOf({
      changes: [{ step: 'first-look', earliestDay: 20, expectedDay: 21, latestDay: 23 }],
    });
    expect(stepOf(timetable, 'first-look').daysAfterLarvae).toBe(21);
  });

  it('lets its own days follow old larvae', () => {
    const changes = [{ step: 'first-look', earliestDay: 20, expectedDay: 21, latestDay: 23 }] as const;
    const timetable = timetableOf({ larvaAgeHours: [48, 48], changes });
    expect(stepOf(timetable, 'first-look').daysAfterLarvae).toBe(20);
  });

  it('cannot put the placing of cells past the deadline', () => {
    const timetable = timetableOf({
      changes: [{ step: 'place-cells', earliestDay: 10, expectedDay: 11, latestDay: 12 }],
    });
    const step = stepOf(timetable, 'place-cells');
    expect(step.latest).toBe(timetable.placeDeadline);
    expect(step.expected).toBe(timetable.placeDeadline);
  });
});

describe('input that cannot be read', () => {
  // The type forbids it; a file made elsewhere does not.
  const unknownMethod = JSON.parse('"moon-rearing"');

  test.each([
    ['method', 'method-unknown', { method: unknownMethod }],
    ['anchor', 'step-not-in-method', { anchor: { step: 'cage-queen', on: day('2026-05-10') } }],
    ['larvaAgeHours', 'larva-age-turned-round', { larvaAgeHours: [24, 12] }],
    ['larvaAgeHours', 'larva-age-impossible', { larvaAgeHours: [12, 97] }],
    ['sealedStageCelsius', 'temperature-impossible', { sealedStageCelsius: 25 }],
    [
      'changes',
      'window-turned-round',
      { changes: [{ step: 'first-look', earliestDay: 24, expectedDay: 22, latestDay: 26 }] },
    ],
    [
      'changes',
      'window-turned-round',
      { changes: [{ step: 'first-look', earliestDay: 20, expectedDay: Number.NaN, latestDay: 26 }] },
    ],
    ['done', 'done-out-of-order', { done: [{ step: 'place-cells', on: day('2026-05-09') }] }],
    [
      'moved',
      'moved-out-of-order',
      {
        done: [{ step: 'count-sealed', on: day('2026-05-15') }],
        moved: [{ step: 'place-cells', to: day('2026-05-14'), reason: '' }],
      },
    ],
    ['seen', 'seen-before-laying', { seen: [aSighting({ on: day('2026-05-05') })] }],
    ['seen', 'seen-needs-hours', { seen: [aSighting({ what: 'larva-size', hours: null })] }],
    ['seen', 'seen-hours-turned-round', { seen: [aSighting({ what: 'larva-size', hours: [30, 20] })] }],
  ] as const)('names the field %s: %s', (field, kind, changes) => {
    const planned = planTimetable(aCalendarInput(changes));
    expect(planned).toMatchObject({ ok: false, refusal: { field, kind } });
  });

  it('allows a sighting on the very day of laying, and eggs on the day the comb went in', () => {
    // Larvae of up to 24 hours on 10 May were laid from 6 May on.
    const old = aSighting({ what: 'larvae-too-old', on: day('2026-05-06') });
    expect(planTimetable(aCalendarInput({ seen: [old] })).ok).toBe(true);
    const eggs = aSighting({ what: 'eggs-first-seen', on: day('2026-05-06') });
    const anchor = { step: 'insert-frame', on: day('2026-05-06') } as const;
    expect(planTimetable(aCalendarInput({ anchor, seen: [eggs] })).ok).toBe(true);
  });
});

test('the anchor may be any step of the timetable and stands on its day', () => {
  for (const { step, expected } of timetableOf().steps) {
    const anchored = timetableOf({ anchor: { step, on: addDays(expected, 3) } });
    expect([step, stepOf(anchored, step).expected]).toEqual([step, expected + 3]);
  }
});

test('nothing that is handed in is changed', () => {
  const input = aCalendarInput({ seen: [aSighting()], done: [{ step: 'count-taken', on: day('2026-05-11') }] });
  const before = structuredClone(input);
  planTimetable(input);
  expect(input).toEqual(before);
});
