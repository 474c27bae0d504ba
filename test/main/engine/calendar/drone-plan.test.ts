import { expect, test } from 'vitest';
import { dronePlan, dronesMatureFrom } from '../../../../main/engine/calendar/drone-plan.ts';
import { day } from '../../../builders/calendar.ts';

test('drones are begun 40 days before matings, their comb 60 days before', () => {
  // Büchler et al. 2013, section 2.2.3.
  expect(dronePlan(day('2026-05-27'))).toEqual({ layLatest: day('2026-04-17'), combInAdvised: day('2026-03-28') });
});

test('eggs laid on the latest day give drones that are mature on the first mating day', () => {
  expect(dronesMatureFrom(dronePlan(day('2026-05-27')).layLatest)).toBe(day('2026-05-27'));
});
