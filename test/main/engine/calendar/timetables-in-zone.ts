// Started by plan-timetable-zones.test.ts under several time zones: prints a digest of many timetables.
import { createHash } from 'node:crypto';
import { developmentClock } from '../../../../main/engine/calendar/development-clock.ts';
import { planTimetable } from '../../../../main/engine/calendar/plan-timetable.ts';
import { methodTable } from '../../../../shared/biology/method-steps.ts';
import { civilTimeOfHours, hoursOfCivilTime } from '../../../../shared/kernel/civil-time.ts';
import { addDays, dayOfIso, isoOfDay } from '../../../../shared/kernel/day.ts';
import { METHODS } from '../../../../shared/model/method.ts';

const first = dayOfIso('2026-01-01');
const lines: string[] = [];
for (let shift = 0; shift < 400; shift += 1) {
  const on = addDays(first, shift);
  for (const method of METHODS) {
    const step = methodTable(method, 'drawn').fixedBy[0] ?? 'give-larvae';
    const planned = planTimetable({
      method,
      comb: 'drawn',
      builderType: 'queenless',
      boxType: null,
      anchor: { step, on },
      larvaAgeHours: null,
      sealedStageCelsius: 33,
      seen: [],
      done: [],
      moved: [],
    });
    if (!planned.ok) throw new Error(planned.refusal.kind);
    lines.push(
      ...planned.value.steps.map(
        (one) => `${one.step} ${isoOfDay(one.earliest)} ${isoOfDay(one.expected)} ${isoOfDay(one.latest)}`,
      ),
    );
  }
  lines.push(civilTimeOfHours(developmentClock('queen', hoursOfCivilTime(`${isoOfDay(on)}T23:30`), 34).emergesAt));
}
const offset = new Date(2026, 6, 1).getTimezoneOffset();
console.log(
  JSON.stringify({ offset, lines: lines.length, digest: createHash('sha256').update(lines.join('\n')).digest('hex') }),
);
