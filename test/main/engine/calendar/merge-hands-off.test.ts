import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findForbiddenDay,
  type HandsOffOf,
  handsOffOn,
  mergeHandsOff,
} from '../../../../main/engine/calendar/merge-hands-off.ts';
import { addDays, type Day } from '../../../../shared/kernel/day.ts';
import { day } from '../../../builders/calendar.ts';

const span = (subject: string, batch: string, from: string, to: string): HandsOffOf => ({
  subject,
  batch,
  step: 'hands-off-cells',
  from: day(from),
  to: day(to),
});

const anySpans = fc.array(
  fc
    .record({
      subject: fc.constantFrom('H1', 'H2', 'K1'),
      batch: fc.constantFrom('a', 'b', 'c'),
      from: fc.nat(40),
      length: fc.nat(7),
    })
    .map(
      ({ subject, batch, from, length }): HandsOffOf => ({
        subject,
        batch,
        step: 'hands-off-cells',
        from: addDays(day('2026-05-01'), from),
        to: addDays(day('2026-05-01'), from + length),
      }),
    ),
  { maxLength: 12 },
);

describe('mergeHandsOff', () => {
  it('joins spans of two batches in one hive and keeps both reasons', () => {
    const merged = mergeHandsOff([
      span('H12', 'b', '2026-05-18', '2026-05-20'),
      span('H12', 'a', '2026-05-16', '2026-05-18'),
    ]);
    expect(merged).toHaveLength(1);
    expect(merged[0]).toMatchObject({ from: day('2026-05-16'), to: day('2026-05-20') });
    expect(merged[0]?.reasons.map((reason) => reason.batch)).toEqual(['a', 'b']);
  });

  it('joins spans that only touch, and keeps hives apart', () => {
    const merged = mergeHandsOff([
      span('H12', 'a', '2026-05-16', '2026-05-18'),
      span('H12', 'b', '2026-05-19', '2026-05-20'),
      span('H13', 'c', '2026-05-16', '2026-05-18'),
    ]);
    expect(merged.map(({ subject, from, to }) => [subject, to - from])).toEqual([
      ['H12', 4],
      ['H13', 2],
    ]);
  });

  it('forbids exactly the days that some span forbids', () => {
    fc.assert(
      fc.property(anySpans, (spans) => {
        const merged = mergeHandsOff(spans);
        for (let on = day('2026-04-28'); on < day('2026-06-25'); on = addDays(on, 1)) {
          for (const subject of ['H1', 'H2', 'K1']) {
            const forbidden = spans.some((one) => one.subject === subject && one.from <= on && on <= one.to);
            expect(handsOffOn(merged, subject, on) !== null).toBe(forbidden);
          }
        }
      }),
    );
  });

  it('offers the two nearest free days, which are really free', () => {
    fc.assert(
      fc.property(anySpans, fc.nat(50), (spans, shift) => {
        const merged = mergeHandsOff(spans);
        const on = addDays(day('2026-05-01'), shift);
        const found = findForbiddenDay(merged, 'H1', on);
        if (!found) return;
        const free = (candidate: Day) => handsOffOn(merged, 'H1', candidate) === null;
        expect(found.alternatives.every(free)).toBe(true);
        const [near = on, far = on] = found.alternatives;
        expect(Math.abs(near - on)).toBeLessThanOrEqual(Math.abs(far - on));
        for (let between = Math.min(near, far) + 1; between < Math.max(near, far); between += 1) {
          expect(free(addDays(0 as Day, between))).toBe(false);
        }
      }),
    );
  });

  it('offers the earlier of two days equally near first', () => {
    const merged = mergeHandsOff([span('H12', 'a', '2026-05-16', '2026-05-18')]);
    expect(findForbiddenDay(merged, 'H12', day('2026-05-17'))?.alternatives).toEqual([
      day('2026-05-15'),
      day('2026-05-19'),
    ]);
  });

  it('finds nothing to flag on a free day', () => {
    expect(
      findForbiddenDay(mergeHandsOff([span('H12', 'a', '2026-05-16', '2026-05-18')]), 'H12', day('2026-05-15')),
    ).toBeNull();
  });
});
