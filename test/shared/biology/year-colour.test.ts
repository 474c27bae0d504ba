import { expect, test } from 'vitest';
import { yearColour } from '../../../shared/biology/year-colour.ts';

// International marking code as printed on tbbk.co.uk and seven more pages; common practice, no written standard found.
test.each([
  [2021, 'white'],
  [2022, 'yellow'],
  [2023, 'red'],
  [2024, 'green'],
  [2025, 'blue'],
  [2026, 'white'],
  [2030, 'blue'],
  [1999, 'green'],
] as const)('%i is %s', (year, colour) => {
  expect(yearColour(year)).toBe(colour);
});
