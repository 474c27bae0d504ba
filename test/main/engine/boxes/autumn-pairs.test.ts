import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AutumnBox, autumnPairs } from '../../../../main/engine/boxes/autumn-pairs.ts';
import { addDays, dayOfIso } from '../../../../shared/kernel/day.ts';
import { AUTUMN_QUEENS, type AutumnQueen } from '../../../../shared/model/autumn-pair.ts';

// Weak with strong, the older queen out, and weak as 2 of 5 or less: common practice, no source.
const TODAY = dayOfIso('2026-09-05');

/** A box at a place of the walk, proved and spare and born in 2026 unless said otherwise. */
const aBox = (place: number, strength: number | null, changes: Partial<AutumnBox> = {}): AutumnBox => ({
  id: `K${place}`,
  yardId: 'fence',
  walkOrder: place,
  boxType: 'four-six-frame',
  strength: strength === null ? null : { value: strength, on: addDays(TODAY, -3) },
  queen: 'proved',
  bornIn: 2026,
  claim: { kind: 'spare' },
  before: null,
  ...changes,
});
const without = (queen: AutumnQueen): Partial<AutumnBox> => ({ queen, claim: null });

const pairsOf = (...boxes: readonly AutumnBox[]) =>
  autumnPairs(boxes, TODAY).pairs.map(({ joined, keeper }) => `${joined} to ${keeper}`);
const leftOf = (...boxes: readonly AutumnBox[]) =>
  autumnPairs(boxes, TODAY).left.map(({ box, why }) => [box, why.kind]);
const onlyPair = (...boxes: readonly AutumnBox[]) => autumnPairs(boxes, TODAY).pairs[0];

describe('which boxes go together', () => {
  test('a weak one goes to the nearest strong one in walking order, and the strong one left over stays', () => {
    const boxes = [aBox(1, 4), aBox(5, 2), aBox(6, 3), aBox(7, 5)];
    expect(pairsOf(...boxes)).toEqual(['K5 to K6']);
    expect(onlyPair(...boxes)?.why).toEqual([{ kind: 'weak', strength: 2 }]);
    expect(leftOf(...boxes)).toEqual([
      ['K1', 'stays'],
      ['K7', 'stays'],
    ]);
  });

  test('of two as near the stronger one', () => {
    expect(pairsOf(aBox(4, 3), aBox(5, 2), aBox(6, 4))).toEqual(['K5 to K6']);
  });

  test('strength 3 stays by itself, and two weak ones make no strong one', () => {
    expect(pairsOf(aBox(1, 3), aBox(2, 4))).toEqual([]);
    const twoWeak = [aBox(1, 2), aBox(2, 1)];
    expect(pairsOf(...twoWeak)).toEqual([]);
    expect(leftOf(...twoWeak)).toEqual([
      ['K1', 'no-neighbour'],
      ['K2', 'no-neighbour'],
    ]);
  });

  test('a strong one without a queen goes to one with a proved queen; then none has to come out', () => {
    const pair = onlyPair(aBox(1, 5, without('none')), aBox(2, 3));
    expect(pair).toEqual({
      joined: 'K1',
      keeper: 'K2',
      why: [{ kind: 'no-queen' }],
      out: null,
      first: 'look-through',
    });
  });

  test('a weak one with a proved queen may go to a strong one without: her queen stays', () => {
    const pair = onlyPair(aBox(1, 2), aBox(2, 4, without('none')));
    expect([pair?.joined, pair?.keeper, pair?.out]).toEqual(['K1', 'K2', null]);
  });

  test('a box that took another in is not joined to a third', () => {
    expect(pairsOf(aBox(1, 2), aBox(2, 4, without('none')), aBox(3, 4))).toEqual(['K1 to K2']);
  });

  test('of another yard or another build is no neighbour', () => {
    expect(leftOf(aBox(1, 2), aBox(2, 4, { yardId: 'wood' }))[0]).toEqual(['K1', 'no-neighbour']);
    expect(leftOf(aBox(1, 2), aBox(2, 4, { boxType: 'mini' }))[0]).toEqual(['K1', 'no-neighbour']);
  });

  test('without one proved queen between them there is no pair', () => {
    const none = [aBox(1, 1, without('none')), aBox(2, 4, without('drone-layer'))];
    expect(pairsOf(...none)).toEqual([]);
    expect(leftOf(...none).map(([, why]) => why)).toEqual(['no-neighbour', 'no-neighbour']);
  });

  test('a box is in one pair only, the weakest first', () => {
    expect(pairsOf(aBox(1, 2), aBox(2, 4), aBox(3, 1))).toEqual(['K3 to K2']);
  });
});

describe('what is not known is not taken as weak', () => {
  test('a box whose strength was never typed is asked for it, and is nobody’s neighbour', () => {
    expect(leftOf(aBox(1, null), aBox(2, 2))).toEqual([
      ['K1', 'strength-unknown'],
      ['K2', 'no-neighbour'],
    ]);
    expect(leftOf(aBox(1, null, without('none')))).toEqual([['K1', 'strength-unknown']]);
  });

  test('a strength of more than 28 days ago does not count', () => {
    const typed = (days: number) => ({ strength: { value: 2, on: addDays(TODAY, -days) } });
    expect(pairsOf(aBox(1, 2, typed(28)), aBox(2, 4))).toEqual(['K1 to K2']);
    expect(autumnPairs([aBox(1, 2, typed(29)), aBox(2, 4)], TODAY).left[0]).toEqual({
      box: 'K1',
      why: { kind: 'strength-old', on: addDays(TODAY, -29) },
    });
  });

  test('a queen who may still come, or is not sure, keeps her box out; so do laying workers and bees that are gone', () => {
    const others = (['on-the-way', 'not-sure', 'bees-gone'] as const).map((queen, index) =>
      aBox(index + 1, 2, without(queen)),
    );
    const boxes = [...others, aBox(4, 4), aBox(5, 3, { ...without('none'), before: 'shake-out' })];
    expect(pairsOf(...boxes)).toEqual([]);
    expect(leftOf(...boxes).map(([, why]) => why)).toEqual([
      'on-the-way',
      'look-again',
      'bees-gone',
      'stays',
      'workers-may-lay',
    ]);
  });

  test('a box for which a ripe cell is at hand waits for it', () => {
    const boxes = [aBox(1, 3, { ...without('none'), before: 'give-cell' }), aBox(2, 4)];
    expect(leftOf(...boxes)[0]).toEqual(['K1', 'cell-at-hand']);
  });

  test('a strong one that lays waits until she is proved; a weak one does not', () => {
    expect(leftOf(aBox(1, 3, without('laying')), aBox(2, 4))[0]).toEqual(['K1', 'not-proved-yet']);
    expect(onlyPair(aBox(1, 2, without('laying')), aBox(2, 4))?.out).toMatchObject({
      box: 'K1',
      reason: { kind: 'not-proved' },
    });
  });
});

describe('two queens: one comes out first', () => {
  test('the older one, though hers is the stronger box', () => {
    const older = { bornIn: 2025, claim: { kind: 'spare' } } as const;
    expect(onlyPair(aBox(1, 2), aBox(2, 4, older))).toMatchObject({
      out: { box: 'K2', reason: { kind: 'older', bornIn: 2025, otherBornIn: 2026 } },
      first: 'take-out',
    });
    expect(onlyPair(aBox(1, 2, older), aBox(2, 4))?.out?.box).toBe('K1');
  });

  test('of the same year, or of a year not known, the one of the weaker box', () => {
    expect(onlyPair(aBox(1, 2), aBox(2, 4))?.out).toMatchObject({
      box: 'K1',
      reason: { kind: 'same-year', bornIn: 2026 },
    });
    expect(onlyPair(aBox(1, 2), aBox(2, 4, { bornIn: null }))?.out).toMatchObject({
      box: 'K1',
      reason: { kind: 'year-unknown' },
    });
  });

  test('the drone-layer and the one given up, however young, in whichever box', () => {
    for (const queen of ['drone-layer', 'given-up'] as const) {
      const bad = { ...without(queen), bornIn: 2026 };
      expect(onlyPair(aBox(1, 2, bad), aBox(2, 4, { bornIn: 2024 }))?.out).toMatchObject({
        box: 'K1',
        reason: { kind: queen },
      });
      expect(onlyPair(aBox(1, 2, { bornIn: 2024 }), aBox(2, 4, bad))?.out).toMatchObject({
        box: 'K2',
        reason: { kind: queen },
      });
    }
  });

  test('one who is promised or wanted, or perhaps so, is given or caged first, never just taken out', () => {
    for (const claim of [{ kind: 'promised', to: 'Ida' }, { kind: 'wanted' }, { kind: 'perhaps' }] as const)
      expect(onlyPair(aBox(1, 2, { claim }), aBox(2, 4))).toMatchObject({ first: 'give-or-cage', out: { claim } });
    // That the queen who stays is promised changes nothing.
    expect(onlyPair(aBox(1, 2), aBox(2, 4, { claim: { kind: 'wanted' } }))?.first).toBe('take-out');
  });
});

test('whatever the boxes: each is told once, the queen that stays is proved, nobody bespoken is lost', () => {
  const box = fc.record({
    strength: fc.option(fc.record({ value: fc.integer({ min: 1, max: 5 }), on: fc.constant(addDays(TODAY, -1)) })),
    queen: fc.constantFrom(...AUTUMN_QUEENS),
    bornIn: fc.option(fc.integer({ min: 2023, max: 2026 })),
    yardId: fc.constantFrom('fence', 'wood', null),
    claim: fc.constantFrom({ kind: 'wanted' } as const, { kind: 'spare' } as const, null),
    before: fc.constantFrom('shake-out', 'give-cell', null),
  });
  fc.assert(
    fc.property(fc.array(box, { maxLength: 12 }), (drawn) => {
      const boxes = drawn.map((changes, place) => aBox(place, null, changes));
      const before = structuredClone(boxes);
      const { pairs, left } = autumnPairs(boxes, TODAY);
      expect(boxes).toEqual(before);
      const told = [...pairs.flatMap(({ joined, keeper }) => [joined, keeper]), ...left.map((one) => one.box)];
      expect(told.toSorted()).toEqual(boxes.map(({ id }) => id).toSorted());
      const byId = new Map(boxes.map((one) => [one.id, one]));
      for (const { joined, keeper, out, first } of pairs) {
        const staying = [joined, keeper].filter((id) => id !== out?.box && byId.get(id)?.queen !== 'none');
        expect(staying.map((id) => byId.get(id)?.queen)).toEqual(['proved']);
        expect(byId.get(joined)?.yardId).toBe(byId.get(keeper)?.yardId);
        expect(byId.get(keeper)?.strength?.value).toBeGreaterThan(2);
        if (out?.claim?.kind === 'wanted') expect(first).toBe('give-or-cage');
      }
    }),
  );
});
