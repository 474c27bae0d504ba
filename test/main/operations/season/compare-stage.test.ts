import { describe, expect, test } from 'vitest';
import { recordBarCounts } from '../../../../main/operations/batches/record-bar-counts.ts';
import { startBatch } from '../../../../main/operations/batches/start-batch.ts';
import { compareStage } from '../../../../main/operations/season/compare-stage.ts';
import { aDeskWithCounted } from '../../../builders/counted-batches.ts';
import { aDesk, mustOk } from '../../../builders/desk.ts';
import { aRow, aStart, barOf } from '../../../builders/running-batch.ts';

const ask = {
  factor: 'method',
  and: null,
  allowingFor: null,
  ahead: 1,
  season: null,
  leaveOutPractice: false,
  stage: 'take',
} as const;

/** Batches by two methods with the given takes of 30, a season apart so that no builder is in use. */
function aDeskWithTakes(takes: Readonly<Record<'larva-grafting' | 'cut-comb-edge', readonly number[]>>) {
  const desk = aDesk({ today: '2026-12-01' });
  let year = 2000;
  for (const [method, list] of Object.entries(takes))
    for (const taken of list) {
      year += 1;
      const id = `b${year}`;
      const start = {
        id,
        method: method as 'cut-comb-edge',
        anchorOn: `${year}-05-04`,
        newBreeder: null,
        newBuilder: null,
      };
      mustOk(startBatch(desk, aStart(start)));
      mustOk(
        recordBarCounts(
          desk,
          aRow(desk, { batchId: id, barId: barOf(desk, id), countedOn: `${year}-05-05`, given: 30, taken }),
        ),
      );
    }
  return desk;
}

test('says so when a clear difference rests on many batches', async () => {
  const { groups, lead } = await compareStage(
    aDeskWithTakes({ 'larva-grafting': [27, 26, 28, 27, 26], 'cut-comb-edge': [12, 15, 13, 14, 12] }),
    ask,
  );
  expect(groups.map((group) => group.groupId)).toEqual(['larva-grafting', 'cut-comb-edge']);
  expect(lead).toMatchObject({ better: 'larva-grafting', certainty: 'as-good-as-certain', isBest: true });
  // The next batch of 30 of a group that took 26 to 28 of 30.
  expect(lead?.next.of).toBe(30);
  expect(lead?.next.lower).toBeGreaterThan(18);
  expect(lead?.next.lower).toBeLessThan(27);
  expect(lead?.next.upper).toBeGreaterThanOrEqual(28);
});

test('says as readily that two cannot be told apart, and names no best on one batch', async () => {
  const alike = await compareStage(
    aDeskWithTakes({ 'larva-grafting': [20, 25, 22], 'cut-comb-edge': [23, 20, 24] }),
    ask,
  );
  expect(alike.lead).toMatchObject({ certainty: 'cannot-tell', isBest: false });
  const few = await compareStage(aDeskWithTakes({ 'larva-grafting': [29], 'cut-comb-edge': [5] }), ask);
  expect(few.lead).toMatchObject({ better: 'larva-grafting', isBest: false });
});

test('draws a single batch towards the others', async () => {
  const { groups } = await compareStage(aDeskWithTakes({ 'larva-grafting': [30], 'cut-comb-edge': [18, 20, 19] }), ask);
  expect(groups[0]?.mean).toBeLessThan(0.97);
  expect(groups[0]?.upper).toBeLessThan(1);
});

test('has nothing to say without counts, and no lead with one group', async () => {
  expect(await compareStage(aDesk(), ask)).toEqual({ stage: 'take', groups: [], lead: null });
  const alone = await compareStage(aDeskWithTakes({ 'larva-grafting': [20], 'cut-comb-edge': [] }), ask);
  expect(alone.lead).toBeNull();
});

test('says how far the two lie apart, and when no difference matters', async () => {
  const far = await compareStage(
    aDeskWithTakes({ 'larva-grafting': [27, 26, 28, 27, 26], 'cut-comb-edge': [12, 15, 13, 14, 12] }),
    ask,
  );
  const { mean = 0, lower = 0, upper = 0 } = far.lead?.difference ?? {};
  // The plain shares lie 134/150 - 66/150 = 0.453 apart; the model draws the two a little together.
  expect(mean).toBeGreaterThan(0.35);
  expect(mean).toBeLessThan(0.453);
  expect(lower).toBeLessThan(mean);
  expect(upper).toBeGreaterThan(mean);
  expect(far.lead?.noMatter).toBe(false);
  const many = (taken: number) => Array.from({ length: 12 }, () => taken);
  const same = await compareStage(aDeskWithTakes({ 'larva-grafting': many(24), 'cut-comb-edge': many(24) }), ask);
  expect(same.lead?.noMatter).toBe(true);
});

test('says how far single batches swing, and when they show no sign of it', async () => {
  const grafting = (list: readonly number[]) => aDeskWithTakes({ 'larva-grafting': list, 'cut-comb-edge': [10, 11] });
  const swinging = await compareStage(grafting([29, 18, 28, 17, 29, 18]), ask);
  // The shares have a standard deviation of 0.20, of which luck alone (binomial) explains about 0.07: sqrt(.2^2 - .07^2) = .19.
  expect(swinging.lead?.swing).toBeGreaterThan(0.12);
  expect(swinging.lead?.swing).toBeLessThan(0.22);
  expect((await compareStage(grafting([24, 24, 25, 24, 24]), ask)).lead?.swing).toBe(0);
  expect((await compareStage(grafting([24, 20, 25]), ask)).lead?.swing).toBeNull();
});

describe('allowing for the builder', () => {
  const asked = { ...ask, allowingFor: 'builder' } as const;
  const batch = (method: 'larva-grafting' | 'cut-comb-edge', builder: string, taken: number) => ({
    method,
    builder,
    tally: { given: 30, taken },
  });

  test('keeps to its answer where every builder had both methods', async () => {
    const even = ['B1', 'B2', 'B3'].flatMap((builder) => [
      batch('larva-grafting', builder, 26),
      batch('cut-comb-edge', builder, 15),
    ]);
    const { lead } = await compareStage(aDeskWithCounted(even), asked);
    expect(lead?.allowing).toMatchObject({
      kind: 'weighed',
      factor: 'builder',
      better: 'larva-grafting',
      disagrees: false,
    });
  });

  test('turns round where the better method only had the better builder', async () => {
    // In each builder cut-comb edge does better, but larva grafting mostly had the strong one (Simpson's paradox).
    const mixed = [
      ...[24, 25, 24, 25, 24].map((taken) => batch('larva-grafting', 'strong', taken)),
      batch('cut-comb-edge', 'strong', 28),
      batch('larva-grafting', 'weak', 8),
      ...[13, 12, 13, 12, 13].map((taken) => batch('cut-comb-edge', 'weak', taken)),
    ];
    const { lead } = await compareStage(aDeskWithCounted(mixed), asked);
    expect(lead).toMatchObject({ better: 'larva-grafting' });
    expect(lead?.allowing).toMatchObject({ kind: 'weighed', better: 'cut-comb-edge', disagrees: true });
  });

  test('says so where the two were never tried on comparable builders, or too few batches were', async () => {
    const apart = ['B1', 'B2', 'B3'].flatMap((builder) => [
      batch('larva-grafting', builder, 26),
      batch('cut-comb-edge', `${builder}x`, 15),
    ]);
    const { lead } = await compareStage(aDeskWithCounted(apart), asked);
    expect(lead?.allowing).toEqual({ kind: 'not-connected', factor: 'builder' });
    const few = await compareStage(aDeskWithCounted(apart.slice(0, 4)), asked);
    expect(few.lead?.allowing).toEqual({ kind: 'too-few', factor: 'builder' });
  });
});

test('parts the groups by two factors', async () => {
  const desk = aDeskWithCounted([
    { builder: 'B1', tally: { given: 30, taken: 20 } },
    { builder: 'B2', tally: { given: 30, taken: 21 } },
    { builder: 'B2', method: 'larva-grafting', tally: { given: 30, taken: 22 } },
  ]);
  const { groups } = await compareStage(desk, { ...ask, and: 'builder' });
  expect(groups.map((group) => group.groupId).toSorted()).toEqual([
    'cut-comb-edge B1',
    'cut-comb-edge B2',
    'larva-grafting B2',
  ]);
});

test('several next batches share the doubt about the rate: their span is wider than luck alone would make it', async () => {
  const desk = aDeskWithTakes({ 'larva-grafting': [24, 20, 25], 'cut-comb-edge': [15, 17, 12] });
  const one = (await compareStage(desk, ask)).lead?.next;
  const three = (await compareStage(desk, { ...ask, ahead: 3 })).lead?.next;
  expect(three).toMatchObject({ batches: 3, of: 3 * (one?.of ?? 0) });
  const width = (next: typeof one) => (next ? next.upper - next.lower : 0);
  expect(width(three)).toBeGreaterThan(Math.sqrt(3) * width(one));
  expect(width(three)).toBeLessThan(3 * width(one));
});
