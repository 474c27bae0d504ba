import { describe, expect, it } from 'vitest';
import { findStartDays, type StartSearch } from '../../../../main/engine/calendar/find-start-days.ts';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { methodTable } from '../../../../shared/biology/method-steps.ts';
import { addDays, type Day, weekdayOfDay } from '../../../../shared/kernel/day.ts';
import { BOX_TYPES, BUILDER_TYPES, COMBS, METHODS } from '../../../../shared/model/method.ts';
import { day } from '../../../builders/calendar.ts';

const RULES = {
  awayDays: new Set<Day>(),
  workWeekdays: [],
  cellsPerBuilder: 20,
  seasonFactor: 1,
  builderRestDays: 4,
  dronesMatureFrom: null,
};
const aSearch = (changes: Partial<StartSearch> = {}): StartSearch => ({
  batch: { method: 'larva-grafting', comb: null, builderType: 'queenless', boxType: null, larvaAgeHours: [12, 24] },
  startStep: 'give-larvae',
  from: day('2026-05-01'),
  days: 60,
  cells: null,
  builderTaken: [],
  boxes: [],
  rules: RULES,
  ...changes,
});
const startsOf = (search: StartSearch) => {
  const found = findStartDays(search);
  if (!found.ok) throw new Error(found.refusal.kind);
  return found.value;
};

describe('findStartDays', () => {
  it('finds every day good when nothing stands in the way, but for jobs that would lie in the past', () => {
    const starts = startsOf(aSearch());
    expect(starts).toHaveLength(60);
    expect(starts.filter((start) => start.troubles.length > 0)).toEqual([]);
    // On the first day the builder is made queenless the same day instead of the day before.
    expect(starts[0]).toMatchObject({ on: day('2026-05-01'), shiftedSteps: ['make-queenless'], rank: 60 });
    expect(starts[1]).toMatchObject({ on: day('2026-05-02'), shiftedSteps: [], rank: 1 });
  });

  it('says which job falls on an away day', () => {
    const awayDays = new Set([day('2026-05-19'), day('2026-05-20')]);
    const start = startsOf(aSearch({ rules: { ...RULES, awayDays } })).find(({ on }) => on === day('2026-05-10'));
    expect(start?.troubles).toEqual([{ kind: 'must-step-away', step: 'place-cells', on: day('2026-05-20') }]);
    expect(start?.rank).toBeNull();
  });

  it('says who holds the builder, what boxes are missing and that drones are late', () => {
    const start = startsOf(
      aSearch({
        cells: 10,
        boxes: [{ id: 'K1', freeFrom: day('2026-05-01') }],
        builderTaken: [{ from: day('2026-05-01'), to: day('2026-05-12'), batch: '26-01' }],
        rules: { ...RULES, dronesMatureFrom: day('2026-06-01') },
      }),
    ).find(({ on }) => on === day('2026-05-10'));
    expect(start?.troubles).toEqual([
      { kind: 'builder-taken', batch: '26-01', until: day('2026-05-12') },
      { kind: 'too-few-boxes', on: day('2026-05-20'), cells: 10, freeBoxes: 1 },
      { kind: 'no-drones-yet', fliesFrom: day('2026-05-27'), dronesMatureFrom: day('2026-06-01') },
    ]);
  });

  it('leaves the builder its rest on both sides', () => {
    // Queenless the day before the larvae, cells out ten days after them, then four days of rest.
    const builderTaken = [{ from: day('2026-05-25'), to: day('2026-06-10'), batch: '26-01' }];
    const good = startsOf(aSearch({ builderTaken })).filter((start) => start.troubles.length === 0);
    expect(good.filter(({ on }) => on < day('2026-05-25')).at(-1)?.on).toBe(day('2026-05-10'));
    expect(good.find(({ on }) => on > day('2026-05-25'))?.on).toBe(day('2026-06-12'));
  });

  it('refuses what no timetable can be made of', () => {
    expect(findStartDays(aSearch({ startStep: 'cage-queen' }))).toMatchObject({
      ok: false,
      refusal: { kind: 'step-not-in-method' },
    });
  });
});

describe('findStartDays against trying every day', () => {
  it('finds the same good days in the same order on 200 seeded cases', () => {
    const random = seededRandom(20_260_510);
    let good = 0;
    let bad = 0;
    for (let seed = 0; seed < 200; seed += 1) {
      const search = randomSearch(random);
      const found = startsOf(search)
        .filter((start) => start.rank !== null)
        .toSorted((a, b) => (a.rank ?? 0) - (b.rank ?? 0))
        .map((start) => start.on);
      const expected = bruteForce(search);
      expect([seed, found]).toEqual([seed, expected]);
      good += found.length;
      bad += search.days - found.length;
    }
    // The cases must be neither all good nor all bad, or the comparison says nothing.
    expect(good).toBeGreaterThan(500);
    expect(bad).toBeGreaterThan(500);
  });
});

/** Plans each start day from nothing and asks each question in the plainest way. */
function bruteForce(search: StartSearch): readonly Day[] {
  const good: { readonly on: Day; readonly shifted: number }[] = [];
  for (let shift = 0; shift < search.days; shift += 1) {
    const on = addDays(search.from, shift);
    const planned = planTimetable({
      ...search.batch,
      anchor: { step: search.startStep, on },
      sealedStageCelsius: null,
      seen: [],
      done: [],
      moved: [],
    });
    if (!planned.ok) throw new Error(planned.refusal.kind);
    const { steps, emergence } = planned.value;
    let works = true;
    let shifted = 0;
    for (const step of steps.filter((one) => one.kind === 'job' && one.hardness === 'must')) {
      const home = (candidate: number) =>
        candidate >= search.from &&
        !search.rules.awayDays.has(addDays(0 as Day, candidate)) &&
        (search.rules.workWeekdays.length === 0 ||
          search.rules.workWeekdays.includes(weekdayOfDay(addDays(0 as Day, candidate))));
      let possible = false;
      for (let candidate: number = step.earliest; candidate <= step.latest; candidate += 1)
        if (home(candidate)) possible = true;
      if (!possible) works = false;
      if (!home(step.expected)) shifted += 1;
    }
    const placing = steps.find((step) => step.step === 'place-cells');
    const queenless = steps.find((step) => step.step === 'make-queenless')?.expected ?? planned.value.larvaeGivenOn;
    const begins = Math.min(queenless, planned.value.larvaeGivenOn);
    if (placing) {
      for (const taken of search.builderTaken) {
        for (let inUse = begins; inUse <= placing.expected + search.rules.builderRestDays; inUse += 1)
          if (inUse >= taken.from && inUse <= taken.to) works = false;
      }
      const free = search.boxes.filter((box) => box.freeFrom !== null && box.freeFrom <= placing.expected).length;
      if (search.cells !== null && free < search.cells) works = false;
    }
    if (search.rules.dronesMatureFrom !== null && emergence.expected + 5 < search.rules.dronesMatureFrom) works = false;
    if (works) good.push({ on, shifted });
  }
  return good.toSorted((a, b) => a.shifted - b.shifted || a.on - b.on).map(({ on }) => on);
}

function randomSearch(random: () => number): StartSearch {
  const int = (below: number) => Math.floor(random() * below);
  const pick = <Item>(items: readonly [Item, ...Item[]]): Item => items[int(items.length)] ?? items[0];
  const from = addDays(day('2026-04-01'), int(60));
  const method = pick(METHODS);
  const comb = pick(COMBS);
  const steps = methodTable(method, comb).fixedBy;
  return {
    batch: {
      method,
      comb,
      builderType: pick(BUILDER_TYPES),
      boxType: random() < 0.3 ? null : pick(BOX_TYPES),
      larvaAgeHours: null,
    },
    startStep: steps[int(steps.length)] ?? 'give-larvae',
    from,
    days: 60,
    cells: random() < 0.3 ? null : int(20),
    builderTaken: Array.from({ length: int(3) }, (_, index) => {
      const begins = addDays(from, int(60));
      return { from: begins, to: addDays(begins, int(14)), batch: `26-0${index}` };
    }),
    boxes: Array.from({ length: int(30) }, (_, index) => ({
      id: `K${index}`,
      freeFrom: random() < 0.1 ? null : addDays(from, int(40) - 10),
    })),
    rules: {
      ...RULES,
      awayDays: new Set(Array.from({ length: int(15) }, () => addDays(from, int(80)))),
      workWeekdays: random() < 0.5 ? [] : [1, 2, 3, 4, 5, 6, 7].filter(() => random() < 0.7),
      dronesMatureFrom: random() < 0.5 ? null : addDays(from, int(50)),
    },
  };
}

/** Mulberry32, a small seeded generator in the public domain: the same cases on every machine. */
function seededRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
