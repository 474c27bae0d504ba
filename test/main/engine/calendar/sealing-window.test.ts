import { expect, test } from 'vitest';
import { sealingWindow } from '../../../../main/engine/calendar/sealing-window.ts';
import { CELL_STAGES } from '../../../../shared/biology/cell-stages.ts';
import { day } from '../../../builders/calendar.ts';

// Days from laying to sealing, 8 (7.5 to 8.5), less the age at each stage: the leaflet of the Welsh Beekeepers' Association.
test.each([
  ['egg', '2026-05-15', '2026-05-18'],
  ['small-larva', '2026-05-13', '2026-05-14'],
  ['large-larva', '2026-05-10', '2026-05-11'],
  ['sealed-pale', '2026-05-06', '2026-05-10'],
  ['sealed-brown-tip', '2026-05-02', '2026-05-05'],
] as const)('%s seen on 10 May is sealed %s to %s', (stage, earliest, latest) => {
  expect(sealingWindow(stage, day('2026-05-10'))).toEqual({ earliest: day(earliest), latest: day(latest) });
});

test('older stages are sealed sooner', () => {
  const days = CELL_STAGES.map(({ key }) => sealingWindow(key, day('2026-05-10')).latest);
  expect(days).toEqual(days.toSorted((a, b) => b - a));
});
