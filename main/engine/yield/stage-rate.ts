import type { BatchTally } from '../../../shared/model/tally.ts';
import { type Interval, wilsonInterval } from './wilson-interval.ts';

export type Stage = 'take' | 'sealing' | 'emergence' | 'mating' | 'through';

/** What entered a stage and what came out of it, in one batch. */
export interface StageCount {
  readonly successes: number;
  readonly of: number;
}

/** A share with everything it rests on. */
export interface StageRate extends StageCount {
  /** Batches in which both ends of the stage were counted. */
  readonly batches: number;
  readonly rate: number | null;
  readonly interval: Interval | null;
}

type Reader = (tally: BatchTally) => StageCount | null;

const both = (of: number | null, successes: number | null): StageCount | null =>
  of === null || successes === null || of === 0 ? null : { of, successes };

/**
 * Both ends of each stage. A stage without both counts, or into which nothing went, says nothing and is left out. The
 * whole way from given to laying is known only once every placed cell's story is known: a running batch is no loss.
 */
const READERS: Readonly<Record<Stage, Reader>> = {
  take: (tally) => both(tally.given, tally.taken),
  sealing: (tally) => both(tally.enteredSealing, tally.sealed),
  emergence: (tally) => both(tally.emergenceKnown, tally.emerged),
  mating: (tally) => both(tally.matingKnown, tally.proved),
  through: (tally) => (isStoryComplete(tally) ? both(tally.given, tally.proved) : null),
};

const isStoryComplete = (tally: BatchTally): boolean =>
  tally.placed > 0
    ? tally.emergenceKnown === tally.placed && tally.matingKnown === tally.emerged
    : tally.taken === 0 || tally.sealed === 0;

export const stageCount = (tally: BatchTally, stage: Stage): StageCount | null => READERS[stage](tally);

/**
 * The plain sum of a stage over batches, with Wilson's range. With several batches that range is too narrow, since
 * batches differ; it stands until the full comparison has been reckoned.
 */
export function stageRate(tallies: readonly BatchTally[], stage: Stage): StageRate {
  const counts = tallies.flatMap((tally) => stageCount(tally, stage) ?? []);
  const of = counts.reduce((sum, count) => sum + count.of, 0);
  const successes = counts.reduce((sum, count) => sum + count.successes, 0);
  return {
    successes,
    of,
    batches: counts.length,
    rate: of === 0 ? null : successes / of,
    interval: wilsonInterval(successes, of),
  };
}
