import { expect, test } from 'vitest';
import { scoreSummary } from '../../../../main/engine/stock/score-summary.ts';

// Büchler et al. 2013, COLOSS BEEBOOK 3.3.2 and 3.3.3: gentleness and calmness are means of at least four scorings, of
// swarming the lowest score of the season counts.
test('gentleness and calmness are means, of swarming the lowest counts', () => {
  expect(scoreSummary('gentleness', [3, 3.5, 4, 3.5])).toEqual({ n: 4, value: 3.5, enough: true });
  expect(scoreSummary('calmness', [3, 4, 4, 4])).toEqual({ n: 4, value: 3.75, enough: true });
  expect(scoreSummary('swarming', [4, 4, 3, 4])).toEqual({ n: 4, value: 3, enough: true });
});

test('fewer than four scores are kept with their number, and said to be too few; none is no zero', () => {
  expect(scoreSummary('gentleness', [4, 4, 4])).toEqual({ n: 3, value: 4, enough: false });
  expect(scoreSummary('swarming', [])).toEqual({ n: 0, value: null, enough: false });
});
