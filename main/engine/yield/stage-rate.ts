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
 * Both ends of each stage. A stage without both counts, or into which nothing went, says nothing and is left out.
 */
const READERS: Readonly<Record<Stage, Reader>> = {
  take: (tally) => both(tally.given, tally.taken),
  sealing: (tally) => both(tally.enteredSealing, tally.sealed),
  emergence: (tally) => both(tally.emergenceKnown, tally.emerged),
  mating: (tally) => both(tally.matingKnown, tally.proved),
  through: wholeWay,
};

/**
 * The whole way from given to laying, known only once every placed cell's story is: a running batch is no loss. Cells
 * removed or not put in boxes are no loss either: the stages' shares are multiplied, as a survival table does (Kaplan &
 * Meier 1958, J. Am. Stat. Assoc. 53:457), so `successes` is what the larvae given would have come to and may be a
 * fraction.
 */
function wholeWay(tally: BatchTally): StageCount | null {
  const take = READERS.take(tally);
  if (!take) return null;
  if (take.successes === 0) return { of: take.of, successes: 0 };
  const sealing = READERS.sealing(tally);
  if (!sealing) return null;
  if (sealing.successes === 0) return { of: take.of, successes: 0 };
  if (tally.placed === 0 || tally.emergenceKnown < tally.placed || tally.matingKnown < tally.emerged) return null;
  const later = [sealing, READERS.emergence(tally), READERS.mating(tally)];
  const share = later.reduce((product, stage) => product * (stage ? stage.successes / stage.of : 0), 1);
  return { of: take.of, successes: take.successes * share };
}

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
