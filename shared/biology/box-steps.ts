import type { BoxType } from '../model/method.ts';
import { BOX_CLOSING, CELL_TIMETABLE, CUSTOM, NUCLEUS_PRACTICE } from './sources.ts';
import type { StepRow } from './step-row.ts';

const stock = (changes: Pick<StepRow, 'days' | 'minutes' | 'source' | 'materials'>): StepRow => ({
  step: 'stock-boxes',
  kind: 'job',
  place: 'boxes',
  base: 'placing',
  timeOfDay: 'afternoon',
  hardness: 'should',
  confidence: 'medium',
  ...changes,
});
const setOut = (changes: Pick<StepRow, 'days' | 'source' | 'hardness'>): StepRow => ({
  step: 'set-out',
  kind: 'job',
  place: 'boxes',
  base: 'placing',
  timeOfDay: 'evening',
  minutes: 20,
  materials: [],
  confidence: 'medium',
  ...changes,
});

/**
 * How each box is stocked and set out, in days from the placing of the cells. Two habits exist. Mini and half-frame
 * boxes are stocked two days ahead, shut in, and stand in their place when the cell comes. Where the kind of box is
 * not known, bees and cell are taken to go in together on the placing day; such a box stays shut in for 1 to 3 days
 * and is set out at dusk of the third, when the queen has left her cell: with a cell placed on day 10 that is day 13,
 * a day after the expected emergence.
 */
export const BOX_STEPS: Readonly<Record<BoxType | 'unknown', readonly StepRow[]>> = {
  mini: [
    stock({
      days: [-3, -2, 0],
      minutes: 120,
      materials: ['mating boxes', 'fondant', 'water spray'],
      source: CELL_TIMETABLE,
    }),
    setOut({ days: [-1, -1, 3], source: BOX_CLOSING, hardness: 'should' }),
  ],
  'half-frame': [
    stock({ days: [-3, -2, 0], minutes: 120, materials: ['mating boxes', 'fondant', 'water spray'], source: CUSTOM }),
    setOut({ days: [-1, 0, 3], source: CUSTOM, hardness: 'should' }),
  ],
  'two-three-frame': [
    stock({ days: [-2, -1, 0], minutes: 150, materials: ['mating boxes', 'sugar syrup'], source: NUCLEUS_PRACTICE }),
    setOut({ days: [-1, 0, 1], source: NUCLEUS_PRACTICE, hardness: 'should' }),
  ],
  'four-six-frame': [
    stock({ days: [-2, -1, 0], minutes: 150, materials: ['mating boxes'], source: NUCLEUS_PRACTICE }),
    setOut({ days: [-1, -1, 0], source: CUSTOM, hardness: 'may' }),
  ],
  unknown: [
    stock({ days: [-1, 0, 0], minutes: 120, materials: ['mating boxes', 'fondant', 'water spray'], source: CUSTOM }),
    setOut({ days: [1, 3, 3], source: BOX_CLOSING, hardness: 'should' }),
  ],
};
