import type { BatchTally } from '../../../shared/model/tally.ts';
import { usablePairs } from './stage-counts.ts';
import { type Interval, wilsonInterval } from './wilson-interval.ts';

export type Stage = 'take' | 'sealing' | 'emergence' | 'mating' | 'through';

/** What entered a stage and what came out of it, in one batch. */
export interface StageCount {
  readonly successes: number;
  readonly of: number;
}

/** The same over several batches. */
export interface StageTotal extends StageCount {
  /** Batches in which both ends of the stage were counted. */
  readonly batches: number;
}

/** A share with everything it rests on. */
export interface StageRate extends StageTotal {
  readonly rate: number | null;
  readonly interval: Interval | null;
}

export type StageCountsOfBatch = Readonly<Record<Stage, StageCount | null>>;

/**
 * Both ends of each stage in one batch. A stage without both counts, or into which nothing went, says nothing: null.
 * What entered is what could go on: cells not removed, cells and queens of which the story is known. Counts that
 * contradict each other are refused where they are typed; in a file that holds them all the same, they say nothing.
 */
export function stageCountsOf(tally: BatchTally): StageCountsOfBatch {
  const counts: Partial<Record<string, StageCount>> = {};
  const { given, taken, sealed, emerged, proved, enteredSealing, emergenceKnown, matingKnown } = tally;
  for (const { stage, successes, of } of usablePairs(
    { given, taken, sealed, emerged, laying: proved },
    { sealed: enteredSealing, emerged: emergenceKnown, laying: matingKnown },
  ))
    if (of > 0 && successes <= of) counts[stage] = { successes, of };
  const stages = {
    take: counts.taken ?? null,
    sealing: counts.sealed ?? null,
    emergence: counts.emerged ?? null,
    mating: counts.laying ?? null,
  };
  return { ...stages, through: wholeWay(tally, stages) };
}

/**
 * The whole way from given to laying, known only once every placed cell's story is: a running batch is no loss. Cells
 * removed or not put in boxes are no loss either: the stages' shares are multiplied, as a survival table does (Kaplan &
 * Meier 1958, J. Am. Stat. Assoc. 53:457), so `successes` is what the larvae given would have come to and may be a
 * fraction.
 */
function wholeWay(
  { placed, emergenceKnown, matingKnown, emerged }: BatchTally,
  { take, sealing, emergence, mating }: Omit<StageCountsOfBatch, 'through'>,
): StageCount | null {
  if (!take) return null;
  if (take.successes === 0) return { of: take.of, successes: 0 };
  if (!sealing) return null;
  if (sealing.successes === 0) return { of: take.of, successes: 0 };
  if (placed === 0 || emergenceKnown < placed || matingKnown < emerged) return null;
  const later = [sealing, emergence, mating];
  const share = later.reduce((product, stage) => product * (stage ? stage.successes / stage.of : 0), 1);
  return { of: take.of, successes: take.successes * share };
}

export const stageCount = (tally: BatchTally, stage: Stage): StageCount | null => stageCountsOf(tally)[stage];

/** One stage added up over batches. */
export function stageTotal(counts: readonly (StageCount | null)[]): StageTotal {
  const total = { successes: 0, of: 0, batches: 0 };
  for (const count of counts)
    if (count) {
      total.successes += count.successes;
      total.of += count.of;
      total.batches += 1;
    }
  return total;
}

/**
 * A plain sum as a share with Wilson's range. With several batches that range is too narrow, since batches differ; it
 * stands until the full comparison has been reckoned.
 */
export const rateOfTotal = ({ successes, of, batches }: StageTotal): StageRate => ({
  successes,
  of,
  batches,
  rate: of === 0 ? null : successes / of,
  interval: wilsonInterval(successes, of),
});

export const stageRate = (tallies: readonly BatchTally[], stage: Stage): StageRate =>
  rateOfTotal(stageTotal(tallies.map((tally) => stageCount(tally, stage))));
