import { expect, test } from 'vitest';
import { type Day, type IsoDay, isoOfDay } from '../../../../shared/kernel/day.ts';
import type { Clash } from '../../../../shared/model/clash.ts';
import { clashSentence } from '../../../../shared/text/english/clashes.ts';
import { day } from '../../../builders/calendar.ts';

const NAMES = {
  batch: (id: string) => id,
  hive: (id: string) => id,
  box: (id: string) => id,
  day: (on: Day | IsoDay) => (typeof on === 'number' ? isoOfDay(on) : on),
};
const ON = day('2026-05-20');

test.each<[string, Clash]>([
  [
    '26-02 needs H12 from 2026-05-20, but it holds the cells of 26-01 until 2026-05-22 and rests after that. Start on 2026-05-27 or later, or use another builder.',
    {
      kind: 'builder-busy',
      batch: '26-02',
      other: '26-01',
      builderId: 'H12',
      on: ON,
      holdsUntil: day('2026-05-22'),
      freeFrom: day('2026-05-27'),
    },
  ],
  [
    '26-02 has 36 cells in H12; about 20 is what one builder finishes well. Share them over 2 builders, or start fewer.',
    { kind: 'too-many-cells', batch: '26-02', builderId: 'H12', cells: 36, usualMost: 20, builders: 2 },
  ],
  [
    'On 2026-05-20 up to 20 cells are ripe, and 15 mating boxes are free. Make 3 more ready by 2026-05-21, or keep the spare cells in cages.',
    {
      kind: 'too-few-boxes',
      on: ON,
      batches: ['26-02'],
      cells: 20,
      freeBoxes: 15,
      deadline: day('2026-05-21'),
      freeByDeadline: 17,
      boxes: 30,
    },
  ],
  [
    'On 2026-05-20 up to 20 cells are ripe, and no mating box is free. Place the rest by 2026-05-21, when enough boxes are free.',
    {
      kind: 'too-few-boxes',
      on: ON,
      batches: ['26-02'],
      cells: 20,
      freeBoxes: 0,
      deadline: day('2026-05-21'),
      freeByDeadline: 20,
      boxes: 30,
    },
  ],
  [
    'On 2026-05-20 up to 20 cells are ripe, and there is no mating box in the workbook yet. Add boxes under Mating boxes, or plan to keep the cells in cages.',
    {
      kind: 'too-few-boxes',
      on: ON,
      batches: ['26-02'],
      cells: 20,
      freeBoxes: 0,
      deadline: day('2026-05-21'),
      freeByDeadline: 0,
      boxes: 0,
    },
  ],
  [
    '“Put the cells in the boxes” of 26-02 falls on 2026-05-20, when you are away. It can be done on 2026-05-19.',
    { kind: 'must-step-away', batch: '26-02', step: 'place-cells', on: ON, reason: 'away', suits: [day('2026-05-19')] },
  ],
  [
    '“Put the cells in the boxes” of 26-02 falls on 2026-05-20, which is not one of your days. No other day is safe: ask someone to do it, or start on another day.',
    { kind: 'must-step-away', batch: '26-02', step: 'place-cells', on: ON, reason: 'weekday', suits: [] },
  ],
  [
    '“Put the comb in the breeder” of 26-02 falls on 2026-05-20, but H12 must be left alone for the cells of 26-01 until 2026-05-21. The nearest free days are 2026-05-22 and 2026-05-18; or take larvae from another hive.',
    {
      kind: 'job-in-hands-off',
      batch: '26-02',
      other: '26-01',
      hiveId: 'H12',
      step: 'insert-frame',
      on: ON,
      until: day('2026-05-21'),
      alternatives: [day('2026-05-22'), day('2026-05-18')],
    },
  ],
  [
    'Queens of 26-02 may fly from 2026-05-20, but the first drones are not mature before 2026-05-21. Start a day later, or look for sealed drone brood in other hives.',
    { kind: 'no-drones-yet', batch: '26-02', fliesFrom: ON, dronesMatureFrom: day('2026-05-21'), daysLater: 1 },
  ],
])('%s', (sentence, clash) => {
  expect(clashSentence(clash, NAMES)).toBe(sentence);
});
