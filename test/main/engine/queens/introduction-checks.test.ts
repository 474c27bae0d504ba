import { expect, test } from 'vitest';
import { checkAgain, introductionChecks } from '../../../../main/engine/queens/introduction-checks.ts';
import { dayOfIso, isoOfDay } from '../../../../shared/kernel/day.ts';

const on = dayOfIso('2026-06-01');
const days = (way: Parameters<typeof introductionChecks>[0]) =>
  introductionChecks(way, on).map(({ what, dueOn, latestOn }) => [what, isoOfDay(dueOn), isoOfDay(latestOn)]);

// Candy cage looked at on day 3 to 5, push-in cage 3 to 7 days (Büchler et al. 2013, 2.3.4; days common practice), then
// left alone; eggs on day 7 to 10 (common practice, no source); seen again after 4 to 6 weeks (Büchler et al. 2013, 3.1.4
// asks for 40 days before daughters are counted as hers).
test('a candy cage is looked at, then eggs, then whether she stayed', () => {
  expect(days('candy-cage')).toEqual([
    ['check-release', '2026-06-04', '2026-06-06'],
    ['check-eggs', '2026-06-08', '2026-06-11'],
    ['check-queen', '2026-06-29', '2026-07-13'],
  ]);
});

test('a push-in cage stays on longer, so eggs are looked for later', () => {
  expect(days('push-in-cage').slice(0, 2)).toEqual([
    ['check-release', '2026-06-06', '2026-06-08'],
    ['check-eggs', '2026-06-10', '2026-06-13'],
  ]);
});

test.each(['small-colony', 'direct', 'other', null] as const)('%s: there is no cage to look at', (way) => {
  expect(days(way).map(([what]) => what)).toEqual(['check-eggs', 'check-queen']);
});

test('a cage not yet empty is looked at again sooner than a comb without eggs', () => {
  expect(isoOfDay(checkAgain('check-release', on).dueOn)).toBe('2026-06-03');
  expect(isoOfDay(checkAgain('check-eggs', on).dueOn)).toBe('2026-06-05');
});
