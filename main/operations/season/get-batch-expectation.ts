import type { z } from 'zod';
import type { BatchAsked, BatchExpectation } from '../../../shared/contract/forecast.ts';
import { WEIGHED_STAGES, type WeighedStage } from '../../../shared/contract/season.ts';
import type { Batch, CountedStage } from '../../../shared/model/batch.ts';
import type { BatchTally } from '../../../shared/model/tally.ts';
import { barsApart } from '../../engine/yield/bars-apart.ts';
import type { StageAhead } from '../../engine/yield/expect-batch.ts';
import { stageCount } from '../../engine/yield/stage-rate.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { tallyOf } from '../batch-lines.ts';
import type { Desk } from '../operation.ts';
import { levelOf } from './counted-batches.ts';
import { expectedCount } from './expected-count.ts';
import { bareCounts, stageGroups } from './stage-groups.ts';

/** A batch against what the other batches of its method led one to expect, and the queens still to come; null when unknown. */
export async function getBatchExpectation(
  desk: Desk,
  { batchId }: z.infer<typeof BatchAsked>,
): Promise<BatchExpectation | null> {
  const { tables } = desk.workbook;
  const batch = tables.batches.get(batchId);
  if (!batch) return null;
  const tally = tallyOf(tables, batch);
  const others = WEIGHED_STAGES.map((stage) => othersAt(desk, batch, stage));
  const stages = await Promise.all(
    WEIGHED_STAGES.map(async (stage, index) => {
      const count = stageCount(tally, stage);
      const other = others[index];
      if (!count || !other) return null;
      const ask = { of: count.of, stages: [{ ...other.ahead, joining: 0 }], already: 0 };
      const expected = expectedCount(await desk.reckon('expect', ask));
      const standing: BatchExpectation['stages'][number]['standing'] =
        count.successes < expected.lower ? 'fewer' : count.successes > expected.upper ? 'more' : 'as-expected';
      return { stage, of: count.of, came: count.successes, expected, standing, batches: other.batches };
    }),
  );
  const way = batch.closedOn === null ? wayAhead(tally) : null;
  return {
    stages: stages.filter((stage) => stage !== null),
    bars: barsThatDiffer(tables, batch),
    toCome: way && {
      from: way.from,
      of: way.of,
      proved: expectedCount(
        await desk.reckon('expect', {
          of: way.enters,
          stages: others
            .slice(way.firstStage)
            .map(({ ahead }, index) => ({ ...ahead, joining: way.joining[index] ?? 0 })),
          already: way.already,
        }),
      ),
    },
  };
}

/** Other batches of the same method, among all methods; practice left out, and never the batch itself. */
function othersAt({ workbook: { tables } }: Desk, batch: Batch, stage: WeighedStage) {
  const input = { factor: 'method', and: null, season: null, leaveOutPractice: true, stage } as const;
  const method = levelOf(tables, batch, 'method');
  const groups = stageGroups(tables, input)
    .map((group) => ({ ...group, counts: group.counts.filter((count) => count.batch.id !== batch.id) }))
    .filter(({ counts }) => counts.length > 0);
  const own = groups.findIndex(({ id }) => id === method);
  const ahead: Omit<StageAhead, 'joining'> = { groups: bareCounts(groups), group: own < 0 ? null : own };
  return { ahead, batches: groups[own]?.counts.length ?? 0 };
}

/** Taken of given, and sealed of those left in: the two a bar is counted for. */
function barsThatDiffer(tables: Tables, batch: Batch): BatchExpectation['bars'] {
  const counts = tables.counts.where({ batchId: batch.id });
  const bars = tables.bars.where({ batchId: batch.id }).toSorted((a, b) => a.number - b.number);
  const found = (['take', 'sealing'] as const).map((stage): BatchExpectation['bars'] => {
    const counted = bars.flatMap(({ id, number }) => {
      const cells = (of: CountedStage) =>
        counts.find((count) => count.barId === id && count.stage === of)?.cells ?? null;
      const [given, taken, sealed] = [cells('given'), cells('taken'), cells('sealed')];
      const of = stage === 'take' ? given : taken === null ? null : taken - (cells('removed') ?? 0);
      const came = stage === 'take' ? taken : sealed;
      return of === null || came === null || came > of ? [] : [{ number, came, of }];
    });
    const apart = barsApart(counted.map(({ came, of }) => ({ successes: came, of })));
    const [better, worse] = [counted[apart?.better ?? -1], counted[apart?.worse ?? -1]];
    return better && worse ? { stage, better, worse } : null;
  });
  return found.find((one) => one !== null) ?? null;
}

interface WayAhead {
  readonly from: NonNullable<BatchExpectation['toCome']>['from'];
  /** Cells at that point, as the person counted them. */
  readonly of: number;
  /** How many enter the first stage ahead, and who joins at each stage. */
  readonly enters: number;
  readonly firstStage: number;
  readonly joining: readonly number[];
  readonly already: number;
}

/** From where the batch goes on, by its last count; null when all is known or nothing is. */
function wayAhead(tally: BatchTally): WayAhead | null {
  const from = (name: WayAhead['from'], of: number | null, firstStage: number): WayAhead | null =>
    of ? { from: name, of, enters: of, firstStage, joining: [], already: 0 } : null;
  if (tally.placed === 0)
    return (
      from('sealed', tally.sealed, 2) ??
      from('taken', tally.sealed === 0 ? 0 : tally.enteredSealing, 1) ??
      from('given', tally.taken === null ? tally.given : 0, 0)
    );
  const unknown = tally.placed - tally.emergenceKnown;
  const waiting = tally.emerged - tally.matingKnown;
  if (unknown + waiting === 0) return null;
  return {
    from: 'placed',
    of: tally.placed,
    enters: unknown,
    firstStage: 2,
    joining: [0, waiting],
    already: tally.proved,
  };
}
