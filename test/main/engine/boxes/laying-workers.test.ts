import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layingWorkersSpan } from '../../../../main/engine/boxes/laying-workers.ts';
import { proposeForBox } from '../../../../main/engine/boxes/propose-for-box.ts';
import { LOOK_RESULTS } from '../../../../shared/model/look.ts';
import { aStanding, dayAfter, seen } from '../../../builders/box-standing.ts';

// Three to four weeks without brood: from memory, no source seen. The cell came on day -2.
const SINCE_CELL = { earliest: dayAfter(19), latest: dayAfter(26) };

test('a box with a cell, a virgin or no queen has been without brood since its cell came', () => {
  expect(layingWorkersSpan(aStanding(0, []))).toEqual(SINCE_CELL);
  for (const result of ['cell', 'out', 'virgin', 'queen', 'none', 'cell-failed'] as const)
    expect(layingWorkersSpan(aStanding(13, [seen(12, result)])), result).toEqual(SINCE_CELL);
});

test('brood seen once puts the days off; while there is brood, or no bees are left, there are none', () => {
  const lost = layingWorkersSpan(aStanding(26, [seen(13, 'laying'), seen(24, 'none')]));
  expect(lost).toEqual({ earliest: dayAfter(34), latest: dayAfter(41) });
  for (const result of ['laying', 'proved', 'drone-layer', 'gone'] as const)
    expect(layingWorkersSpan(aStanding(26, [seen(24, result)])), result).toBeNull();
});

test('a proposal warns of laying workers only on or after the first of these days', () => {
  const results = LOOK_RESULTS.filter((result) => result !== 'not-looked');
  const looks = fc.array(fc.tuple(fc.integer({ min: -2, max: 40 }), fc.constantFrom(...results)), { maxLength: 5 });
  fc.assert(
    fc.property(fc.integer({ min: -2, max: 60 }), looks, (age, found) => {
      const past = found.filter(([on]) => on <= age).toSorted(([a], [b]) => a - b);
      const box = aStanding(
        age,
        past.map(([on, result]) => seen(on, result)),
      );
      const warned = proposeForBox(box)?.reasons.some(({ kind }) => kind === 'laying-workers') ?? false;
      const span = layingWorkersSpan(box);
      if (warned) expect(span !== null && span.earliest <= box.today).toBe(true);
    }),
  );
});
