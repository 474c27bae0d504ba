import { expect, test } from 'vitest';
import { droneColoniesFor } from '../../../shared/biology/drones.ts';

// Büchler et al. 2013 section 2.2.1, and practice in Florida.
test.each([
  [60, { perQueens: 8, perBoxes: 4 }],
  [500, { perQueens: 20, perBoxes: 30 }],
  [1000, { perQueens: 40, perBoxes: 60 }],
])('%i queens', (queens, colonies) => {
  expect(droneColoniesFor(queens)).toEqual(colonies);
});
