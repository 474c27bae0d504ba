import type { BarRow } from '../../../shared/contract/batches.ts';
import { COUNTED_STAGES, type CountedStage } from '../../../shared/model/batch.ts';

export type TypedCounts = Readonly<Record<CountedStage, string>>;
export type ReadCounts = Readonly<Record<CountedStage, number | null>>;

const forEachStage = <Value>(valueFor: (stage: CountedStage) => Value) =>
  Object.fromEntries(COUNTED_STAGES.map((stage) => [stage, valueFor(stage)])) as Readonly<Record<CountedStage, Value>>;

export const typedCounts = (bar: BarRow): TypedCounts => forEachStage((stage) => bar.counts[stage]?.toString() ?? '');

/** Numbers as typed; empty is "not counted", never 0. null when any field is no whole number. */
export function readCounts(typed: TypedCounts): ReadCounts | null {
  const read = forEachStage((stage) => {
    const text = typed[stage].trim();
    if (text === '') return null;
    return /^\d{1,3}$/.test(text) ? Number(text) : Number.NaN;
  });
  return COUNTED_STAGES.some((stage) => Number.isNaN(read[stage])) ? null : read;
}

/** Cells that were removed on purpose; null, which is not 0, where no bar says so. */
export function cellsRemoved(bars: readonly Pick<BarRow, 'counts'>[]): number | null {
  const typed = bars.flatMap(({ counts: { removed } }) => (removed === null ? [] : [removed]));
  return typed.length === 0 ? null : typed.reduce((sum, cells) => sum + cells, 0);
}
