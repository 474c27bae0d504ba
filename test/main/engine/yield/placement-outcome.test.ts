import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placementOutcome } from '../../../../main/engine/yield/placement-outcome.ts';
import { LOOK_RESULTS, type LookResult } from '../../../../shared/model/look.ts';
import { PLACEMENT_ENDS } from '../../../../shared/model/mating-box.ts';

const outcome = (results: readonly LookResult[], end: Parameters<typeof placementOutcome>[0]['end'] = null) =>
  placementOutcome({ results, end });

describe('what became of a cell', () => {
  test.each([
    [[], { emerged: null, mated: null, laying: false }],
    [['cell'], { emerged: null, mated: null, laying: false }],
    [['not-looked'], { emerged: null, mated: null, laying: false }],
    [['out'], { emerged: true, mated: null, laying: false }],
    [['cell-failed'], { emerged: false, mated: false, laying: false }],
    [['laying'], { emerged: true, mated: null, laying: true }],
    [['laying', 'proved'], { emerged: true, mated: true, laying: true }],
    [['laying', 'drone-layer'], { emerged: true, mated: false, laying: false }],
    [['proved', 'gone'], { emerged: true, mated: true, laying: false }],
    [['proved', 'drone-layer'], { emerged: true, mated: false, laying: false }],
    [['out', 'none'], { emerged: true, mated: false, laying: false }],
    // Common practice, no source: a box without a queen whose cell was not seen to fail counts as emerged.
    [['none'], { emerged: true, mated: false, laying: false }],
    [['gone'], { emerged: true, mated: false, laying: false }],
    [['cell-failed', 'none'], { emerged: false, mated: false, laying: false }],
  ] as const)('%j', (results, expected) => {
    expect(outcome(results)).toEqual(expected);
  });

  test('a laying queen that is caught counts as mated; one united or taken back does not count', () => {
    expect(outcome(['laying'], 'caught').mated).toBe(true);
    expect(outcome(['virgin'], 'caught')).toMatchObject({ emerged: true, mated: null });
    expect(outcome(['laying'], 'united').mated).toBeNull();
    expect(outcome([], 'failed')).toMatchObject({ emerged: null, mated: false });
    expect(outcome(['virgin'], 'shaken-out')).toMatchObject({ emerged: true, mated: false });
  });

  test('"not looked" never changes anything, wherever it stands', () => {
    const anyResults = fc.array(fc.constantFrom(...LOOK_RESULTS));
    fc.assert(
      fc.property(anyResults, fc.option(fc.constantFrom(...PLACEMENT_ENDS)), (results, end) => {
        const looked = results.filter((result) => result !== 'not-looked');
        expect(outcome(results, end)).toEqual(outcome(looked, end));
      }),
    );
  });
});
