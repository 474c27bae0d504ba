import { describe, expect, it } from 'vitest';
import { emergenceDays } from '../../../../main/engine/calendar/emergence-hours.ts';
import { narrowLaying } from '../../../../main/engine/calendar/narrow-laying.ts';
import { aSighting, day, stepOf, timetableOf } from '../../../builders/calendar.ts';

const ZERO = day('2026-05-10');
/** Larvae of 12 to 24 hours given at noon of day 0. */
const USUAL = { oldest: -96, typical: -96, youngest: -84 };
const NOTED_AGE = { kind: 'larva-age', hours: [12, 24], on: ZERO } as const;
const BASE = { fact: NOTED_AGE, allows: USUAL };
const narrow = (...seen: Parameters<typeof narrowLaying>[2]) => narrowLaying(USUAL, BASE, seen, ZERO);

describe('narrowLaying', () => {
  it('leaves the usual interval alone when nothing was seen', () => {
    expect(narrow()).toMatchObject({ laying: USUAL, decidedBy: null, contradictions: [], isSingleReading: false });
  });

  it('cuts off laying times that an age note rules out, and names the note', () => {
    // Seen on day 0: larvae of 18 to 40 hours, so laid 90 to 112 hours before.
    const note = aSighting({ id: 'note', what: 'larva-age-note', on: ZERO, hours: [18, 40] });
    const { laying, decidedBy } = narrow(note);
    expect(laying).toEqual({ oldest: -96, typical: -96, youngest: -90 });
    expect(decidedBy).toMatchObject({ kind: 'seen', id: 'note' });
  });

  it('keeps what two notes share', () => {
    const wide = { oldest: -168, typical: -168, youngest: -72 };
    const seen = [
      aSighting({ id: 'a', what: 'larva-age-note', on: ZERO, hours: [10, 40] }),
      aSighting({ id: 'b', what: 'larva-age-note', on: day('2026-05-11'), hours: [48, 80] }),
    ];
    // a: laid -112..-82; b: 24 - 72 - 80 = -128 .. 24 - 72 - 48 = -96.
    expect(narrowLaying(wide, BASE, seen, ZERO).laying).toEqual({ oldest: -112, typical: -112, youngest: -96 });
  });

  it('names both facts when they exclude each other, and reckons with the older reading', () => {
    const note = aSighting({ id: 'note', what: 'larva-age-note', on: ZERO, hours: [48, 60] });
    const { laying, contradictions, decidedBy } = narrow(note);
    expect(contradictions).toEqual([
      { one: NOTED_AGE, other: { kind: 'seen', id: 'note', what: 'larva-age-note', on: ZERO } },
    ]);
    expect(laying.oldest).toBe(-120);
    expect(laying.youngest).toBe(-120);
    expect(decidedBy).toMatchObject({ id: 'note' });
  });

  it('names every pair when three facts cannot all be true', () => {
    const open = aSighting({ id: 'open', what: 'cells-open', on: day('2026-05-20') });
    const hole = aSighting({ id: 'hole', what: 'emerged-hole', on: day('2026-05-21') });
    expect(narrow(open, hole).contradictions.map(({ one, other }) => [one.kind, other.kind])).toEqual([
      ['larva-age', 'seen'],
      ['seen', 'seen'],
    ]);
  });

  it('says nothing about laying when cells were torn down or a job was late', () => {
    for (const what of ['cells-torn-down', 'job-done-on-another-day', 'larvae-too-old'] as const) {
      expect(narrow(aSighting({ what })).laying).toEqual(USUAL);
    }
  });
});

describe('an age that nobody noted', () => {
  it('gives way to younger brood when cells are still open after six days', () => {
    const open = aSighting({ what: 'cells-open', on: day('2026-05-16') });
    const noted = timetableOf({ seen: [open] });
    expect(noted.contradictions).toHaveLength(1);
    const assumed = timetableOf({ larvaAgeHours: null, seen: [open] });
    expect(assumed.contradictions).toEqual([]);
    expect(assumed.reckonedFrom).toMatchObject({ kind: 'seen', what: 'cells-open' });
    // Sealed 8.5 days after laying at the latest, so laid 60 hours before day 0: a day and more later than usual.
    expect(assumed.emergence).toEqual({
      earliest: day('2026-05-23'),
      expected: day('2026-05-24'),
      latest: day('2026-05-24'),
    });
  });

  it('gives way to older brood when cells are sealed on day 2', () => {
    const sealed = aSighting({ what: 'cells-sealed', on: day('2026-05-12') });
    const assumed = timetableOf({ larvaAgeHours: null, seen: [sealed] });
    expect(assumed.contradictions).toEqual([]);
    expect(assumed.emergence.earliest).toBeLessThan(timetableOf().emergence.earliest);
  });

  it('gives way no further than brood that could have been given', () => {
    const proved = aSighting({ what: 'sealed-brood', on: day('2026-05-20') });
    const [contradiction] = timetableOf({ larvaAgeHours: null, seen: [proved] }).contradictions;
    expect(contradiction).toMatchObject({
      one: { kind: 'step', step: 'give-larvae' },
      other: { what: 'sealed-brood' },
    });
  });

  it('does not reconcile two sightings that exclude each other', () => {
    const seen = [
      aSighting({ id: 'open', what: 'cells-open', on: day('2026-05-18') }),
      aSighting({ id: 'brown', what: 'cells-browned', on: day('2026-05-17') }),
    ];
    expect(timetableOf({ larvaAgeHours: null, seen }).contradictions).toHaveLength(1);
  });
});

describe('what each sighting does to a forecast', () => {
  const wide = { larvaAgeHours: [0, 72] } as const;
  const before = timetableOf(wide);

  it.each([
    // Winston 1987 from memory and the sealing leaflet: 7.5 to 8.5 days from the egg to the sealed cell.
    [
      'cells still open on day 4 rule out old larvae',
      aSighting({ what: 'cells-open', on: day('2026-05-14') }),
      'later',
    ],
    ['cells sealed on day 3 rule out young ones', aSighting({ what: 'cells-sealed', on: day('2026-05-13') }), 'sooner'],
    ['brown tips on day 8 rule out young ones', aSighting({ what: 'cells-browned', on: day('2026-05-18') }), 'sooner'],
    [
      'a queen out on day 10 rules out young ones',
      aSighting({ what: 'emerged-hole', on: day('2026-05-20') }),
      'sooner',
    ],
    ['eggs on day 18 rule out young ones', aSighting({ what: 'first-eggs', on: day('2026-05-28') }), 'sooner'],
    [
      'sealed brood on day 26 rules out young ones',
      aSighting({ what: 'sealed-brood', on: day('2026-06-05') }),
      'sooner',
    ],
  ] as const)('%s', (_name, seen, moves) => {
    const after = timetableOf({ ...wide, seen: [seen] });
    expect(after.contradictions).toEqual([]);
    if (moves === 'later') expect(after.emergence.earliest).toBeGreaterThan(before.emergence.earliest);
    else expect(after.emergence.latest).toBeLessThan(before.emergence.latest);
    expect(after.reckonedFrom).toMatchObject({ kind: 'seen', what: seen.what });
  });

  it('a sealing watched from one day to the next dates swarm cells from both sides', () => {
    const swarm = {
      method: 'swarm-cells',
      larvaAgeHours: null,
      anchor: { step: 'sealed', on: day('2026-05-12') },
    } as const;
    const plain = timetableOf(swarm);
    const watched = timetableOf({ ...swarm, seen: [aSighting({ what: 'cells-browned', on: day('2026-05-16') })] });
    expect(watched.emergence.latest).toBeLessThan(plain.emergence.latest);
  });
});

describe('the comb before the larvae', () => {
  const cutComb = {
    method: 'cut-comb-edge',
    comb: 'foundation',
    larvaAgeHours: null,
    anchor: { step: 'insert-frame', on: day('2026-05-01') },
  } as const;

  it('moves the start when it is not drawn in time, and says why', () => {
    const undrawn = aSighting({ what: 'frame-not-drawn', on: day('2026-05-05') });
    const timetable = timetableOf({ ...cutComb, seen: [undrawn] });
    expect(timetable.larvaeGivenOn).toBe(day('2026-05-10'));
    expect(timetable.reckonedFrom).toMatchObject({ what: 'frame-not-drawn' });
  });

  it('moves nothing when it is looked at early enough', () => {
    const early = aSighting({ what: 'frame-not-drawn', on: day('2026-05-02') });
    expect(timetableOf({ ...cutComb, seen: [early] }).larvaeGivenOn).toBe(day('2026-05-08'));
  });

  it('moves nothing any more once the larvae were given', () => {
    const undrawn = aSighting({ what: 'frame-not-drawn', on: day('2026-05-05') });
    const done = [{ step: 'give-larvae', on: day('2026-05-08') }] as const;
    expect(timetableOf({ ...cutComb, seen: [undrawn], done }).larvaeGivenOn).toBe(day('2026-05-08'));
  });

  it('starts from eggs that came early as well as late', () => {
    const eggs = (on: string) => [aSighting({ what: 'eggs-first-seen', on: day(on) })];
    expect(timetableOf({ ...cutComb, seen: eggs('2026-05-03') }).larvaeGivenOn).toBe(day('2026-05-07'));
    expect(timetableOf({ ...cutComb, seen: eggs('2026-05-06') }).larvaeGivenOn).toBe(day('2026-05-10'));
  });
});

describe('emergenceDays', () => {
  it('puts 32 °C 27 hours later, as the 2015 study', () => {
    // Chuda-Mickiewicz & Samborski 2015: 16 d 1 h at 34.5 °C, 1 d 3 h more at 32 °C. Noon + 12 d 1 h + 27 h = day 13.
    expect(emergenceDays(USUAL, 32).expected).toBe(13);
    expect(emergenceDays(USUAL, 34.5).expected).toBe(12);
  });

  it('does not let cool cells put off the deadline, but lets warm ones bring it forward', () => {
    expect(emergenceDays(USUAL, 32).placeDeadline).toBe(10);
    expect(emergenceDays(USUAL, 36).placeDeadline).toBe(9);
  });
});

it('a queen seen out caps the expected day', () => {
  const seen = [aSighting({ what: 'emerged-hole', on: day('2026-05-21') })];
  expect(stepOf(timetableOf({ seen }), 'emergence').expected).toBe(day('2026-05-21'));
});
