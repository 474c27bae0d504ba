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
  return {
    stages: stages.filter((stage) => stage !== null),
    bars: barsThatDiffer(tables, batch),
    toCome: await queensToCome(desk, batch, tally.proved),
  };
}

/**
 * The proved queens that what is counted of a batch, or else what is planned for it, may still bring; null where nothing
 * is known of it or nothing is open any more.
 * @param already proved before, and counted in.
 */
export async function queensToCome(desk: Desk, batch: Batch, already: number): Promise<BatchExpectation['toCome']> {
  const way = batch.closedOn === null ? wayAhead(tallyOf(desk.workbook.tables, batch), batch.cellsPlanned) : null;
  if (way === null) return null;
  const stages = WEIGHED_STAGES.slice(way.firstStage).map((stage, index) => ({
    ...othersAt(desk, batch, stage).ahead,
    joining: way.joining[index] ?? 0,
  }));
  const proved = expectedCount(
    await desk.reckon('expect', { of: way.enters, stages, already: way.counts ? already : 0 }),
  );
  return { from: way.from, of: way.of, proved };
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
  /** Queens of it are proved, or may be: they are counted in. */
  readonly counts: boolean;
}

/** From where the batch goes on, by its last count; null when all is known or nothing is. */
function wayAhead(tally: BatchTally, planned: number | null): WayAhead | null {
  const from = (name: WayAhead['from'], of: number | null, firstStage: number): WayAhead | null =>
    of ? { from: name, of, enters: of, firstStage, joining: [], counts: false } : null;
  if (tally.placed === 0)
    return (
      from('sealed', tally.sealed, 2) ??
      from('taken', tally.sealed === 0 ? 0 : tally.enteredSealing, 1) ??
      from('given', tally.taken === null ? tally.given : 0, 0) ??
      from('planned', tally.given === null && tally.taken === null && tally.sealed === null ? planned : 0, 0)
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
    counts: true,
  };
}
