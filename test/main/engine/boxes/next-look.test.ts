import { expect, test } from 'vitest';
import { nextLook } from '../../../../main/engine/boxes/next-look.ts';
import { aStanding, dayAfter, seen } from '../../../builders/box-standing.ts';

// Worker brood is sealed 8.5 to 9 days after the egg (liquisearch.com). Days after emergence: check 1 to 4, first look 12, sealed brood 21 (Büchler et al. 2013, 2.2.2); between two doubtful
// looks 4 days (common practice, no source); hands off from day 3 to 10.
test.each([
  ['nothing seen yet', [], 2],
  ['she is out', [seen(2, 'out')], 12],
  ['a virgin at the first look', [seen(12, 'virgin')], 16],
  ['a queen early on', [seen(3, 'queen')], 12],
  ['no queen once', [seen(14, 'none')], 18],
  ['cell closed, so not before the quiet days are over', [seen(2, 'cell')], 11],
  ['eggs', [seen(12, 'laying')], 21],
  ['eggs seen late, so brood is sealed nine days on', [seen(22, 'laying')], 31],
  ['eggs seen twice count from the first time', [seen(14, 'laying'), seen(18, 'laying')], 23],
] as const)('%s', (_what, looks, age) => {
  expect(nextLook(aStanding(13, looks))).toBe(dayAfter(age));
});

test.each(['proved', 'gone', 'drone-layer', 'cell-failed'] as const)('%s settles it', (result) => {
  expect(nextLook(aStanding(13, [seen(12, result)]))).toBeNull();
});
