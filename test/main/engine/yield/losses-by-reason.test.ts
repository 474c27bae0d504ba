import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchTally, emptyTally } from '../../../../main/engine/yield/batch-tally.ts';
import { type LossFacts, lossesByReason } from '../../../../main/engine/yield/losses-by-reason.ts';
import { LOSS_STAGES } from '../../../../shared/model/loss.ts';

const facts = (changes: Partial<LossFacts> = {}): LossFacts => ({
  tally: batchTally('b', [{ given: 20, taken: 11, sealed: 10 }], []),
  losses: [],
  droneLayers: 0,
  ...changes,
});

describe('losses by reason', () => {
  test('what has no reason stays unknown', () => {
    const losses = [
      { stage: 'taken', reason: 'chilled', cells: 2 },
      { stage: 'taken', reason: 'drowned', cells: 4 },
    ] as const;
    expect(lossesByReason([facts({ losses })])).toEqual([
      {
        stage: 'taken',
        of: 20,
        lost: 9,
        reasons: [
          { reason: 'drowned', cells: 4 },
          { reason: 'chilled', cells: 2 },
        ],
        droneLayers: 0,
        unknown: 3,
        tooMany: 0,
      },
      { stage: 'sealed', of: 11, lost: 1, reasons: [], droneLayers: 0, unknown: 1, tooMany: 0 },
    ]);
  });

  test('a stage that was not counted, and one without a loss, is no line, even where somebody gave a reason', () => {
    const losses = [{ stage: 'sealed', reason: 'chilled', cells: 2 }] as const;
    expect(lossesByReason([facts({ tally: emptyTally('b'), losses })])).toEqual([]);
    const none = batchTally('b', [{ given: 20, taken: 20, sealed: 20 }], []);
    expect(lossesByReason([facts({ tally: none })])).toEqual([]);
  });

  test('reasons typed before a count was corrected to no loss stay in sight, as too many', () => {
    const tally = batchTally('b', [{ given: 20, taken: 20, sealed: 20 }], []);
    const losses = [{ stage: 'taken', reason: 'chilled', cells: 3 }] as const;
    expect(lossesByReason([facts({ tally, losses })])).toMatchObject([
      { stage: 'taken', of: 20, lost: 0, unknown: 0, tooMany: 3, reasons: [{ reason: 'chilled', cells: 3 }] },
    ]);
  });

  test('cells removed on purpose are no loss', () => {
    const tally = batchTally('b', [{ given: 20, taken: 20, removed: 5, sealed: 15 }], []);
    expect(lossesByReason([facts({ tally })])).toEqual([]);
  });

  test('a drone-layer that was seen is a known reason; a box found without a queen is not', () => {
    const placements = [
      { results: ['out', 'drone-layer'], end: null },
      { results: ['out', 'none'], end: null },
      { results: ['out', 'proved'], end: null },
      { results: ['out'], end: null },
    ] as const;
    const [proved] = lossesByReason([facts({ tally: batchTally('b', [], placements), droneLayers: 1 })]);
    expect(proved).toMatchObject({ stage: 'proved', of: 3, lost: 2, droneLayers: 1, unknown: 1 });
  });

  test('of several batches only the counted ones are added, and one with too many reasons does not explain another’s', () => {
    const one = facts({ losses: [{ stage: 'taken', reason: 'chilled', cells: 12 }] });
    const [taken] = lossesByReason([one, facts(), facts({ tally: emptyTally('c') })]);
    expect(taken).toMatchObject({ of: 40, lost: 18, unknown: 9, tooMany: 3 });
  });

  test('lost is always what has a reason and what has none, less what is too many', () => {
    const count = fc.integer({ min: 0, max: 30 });
    const anyFacts = fc
      .record({ given: count, taken: count, sealed: count, typed: count, layers: count })
      .map((drawn) =>
        facts({
          tally: batchTally(
            'b',
            [{ given: drawn.given + drawn.taken, taken: drawn.taken, sealed: Math.min(drawn.taken, drawn.sealed) }],
            [],
          ),
          losses: drawn.typed === 0 ? [] : [{ stage: 'taken', reason: 'other', cells: drawn.typed }],
          droneLayers: drawn.layers,
        }),
      );
    fc.assert(
      fc.property(fc.array(anyFacts, { maxLength: 6 }), (batches) => {
        for (const { lost, reasons, droneLayers, unknown, tooMany, stage } of lossesByReason(batches)) {
          const typed = reasons.reduce((sum, { cells }) => sum + cells, 0);
          expect(typed + droneLayers + unknown - tooMany).toBe(lost);
          expect(LOSS_STAGES).toContain(stage);
        }
      }),
    );
  });
});
