import { describe, expect, it } from 'vitest';
import { developmentClock } from '../../../../main/engine/calendar/development-clock.ts';
import { civilTimeOfHours, hoursOfCivilTime } from '../../../../shared/kernel/civil-time.ts';

const emerges = (...[caste, laidAt, celsius]: [Parameters<typeof developmentClock>[0], string, number | null]) =>
  civilTimeOfHours(developmentClock(caste, hoursOfCivilTime(laidAt), celsius).emergesAt);

describe('developmentClock', () => {
  it('takes 16 days 1 hour at 34.5 °C and 27 hours more at 32 °C', () => {
    // Chuda-Mickiewicz & Samborski 2015, Acta Sci. Pol. Zootechnica 14(4).
    expect(emerges('queen', '2026-05-06T11:00', 34.5)).toBe('2026-05-22T12:00');
    expect(emerges('queen', '2026-05-06T11:00', null)).toBe('2026-05-22T12:00');
    expect(emerges('queen', '2026-05-06T11:00', 32)).toBe('2026-05-23T15:00');
  });

  it('takes 21 days for workers and 24 for drones, whatever the warmth', () => {
    // Winston 1987, from memory.
    expect(emerges('worker', '2026-05-06T12:00', 32)).toBe('2026-05-27T12:00');
    expect(emerges('drone', '2026-05-06T12:00', null)).toBe('2026-05-30T12:00');
  });

  it('hatches before it is sealed and is sealed before it emerges', () => {
    for (const caste of ['queen', 'worker', 'drone'] as const) {
      const times = developmentClock(caste, hoursOfCivilTime('2026-05-06T12:00'), null);
      expect(times.hatchesAt).toBeLessThan(times.sealedAt);
      expect(times.sealedAt).toBeLessThan(times.emergesAt);
    }
  });
});
