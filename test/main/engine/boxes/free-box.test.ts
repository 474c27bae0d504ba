import { expect, test } from 'vitest';
import { freeBoxDays } from '../../../../main/engine/boxes/free-box.ts';
import { addDays, dayOfIso } from '../../../../shared/kernel/day.ts';

const endedOn = dayOfIso('2026-06-10');
const after = (days: number) => addDays(endedOn, days);

// Two days to the next cell, own cells destroyed on day 4 to 5: de Bruyn 2015, Bee Craft. Laying workers after three
// weeks: from memory, no source seen.
test('a box whose queen was taken rests two days and is looked at for own cells', () => {
  expect(freeBoxDays({ endedOn, endReason: 'caught', broodlessSince: after(-9) })).toEqual({
    freeFrom: after(2),
    ownCellsOn: after(4),
    layingWorkers: { earliest: after(21), latest: after(28) },
  });
});

test('a box that lost its queen may take a cell at once; one without bees has nothing to wait for', () => {
  const broodlessSince = after(-18);
  expect(freeBoxDays({ endedOn, endReason: 'failed', broodlessSince }).freeFrom).toBe(endedOn);
  for (const endReason of ['united', 'shaken-out'] as const)
    expect(freeBoxDays({ endedOn, endReason, broodlessSince })).toEqual({
      freeFrom: endedOn,
      ownCellsOn: null,
      layingWorkers: null,
    });
});

test('bees that were without brood before their box was freed are not given their three weeks anew', () => {
  const days = freeBoxDays({ endedOn, endReason: 'failed', broodlessSince: after(-18) });
  expect(days.layingWorkers).toEqual({ earliest: after(3), latest: after(10) });
});
