import { addDays, laterOf } from '../../../shared/kernel/day.ts';
import type { DatedStep, Step } from '../../../shared/model/step.ts';
import type { LoggedWeather } from '../../../shared/model/weather.ts';
import { lateDays } from './flight-record.ts';

/**
 * Puts the late warning and the giving up off by the days on which no queen could fly, reckoned from the expected
 * emergence. Steps done stay; a method that waits longer or shorter than usual keeps its own difference.
 */
export function waitForWeather(steps: readonly DatedStep[], log: readonly LoggedWeather[]): readonly DatedStep[] {
  const emergence = steps.find((one) => one.step === 'emergence');
  if (log.length === 0 || !emergence) return steps;
  const usual = lateDays(emergence.expected, []);
  const late = lateDays(emergence.expected, log);
  const putOff: Partial<Record<Step, number>> = {
    'late-warning': late.warningOn - usual.warningOn,
    'give-up': late.giveUpOn - usual.giveUpOn,
  };
  return steps
    .map((one) => (one.doneOn === null ? later(one, putOff[one.step] ?? 0) : one))
    .toSorted((a, b) => a.expected - b.expected);
}

function later(step: DatedStep, days: number): DatedStep {
  if (days === 0) return step;
  const expected = addDays(step.expected, days);
  return {
    ...step,
    expected,
    earliest: step.earliest === step.expected ? expected : step.earliest,
    latest: laterOf(step.latest, expected),
    daysAfterLarvae: step.daysAfterLarvae + days,
  };
}
