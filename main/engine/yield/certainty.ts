export type CertaintyWord = 'cannot-tell' | 'leaning' | 'probably' | 'very-likely' | 'as-good-as-certain';

/** From which probability each word is said; below the first, that the two cannot be told apart. A judgement of this house. */
const LIMITS: readonly (readonly [number, CertaintyWord])[] = [
  [0.99, 'as-good-as-certain'],
  [0.95, 'very-likely'],
  [0.8, 'probably'],
  [0.6, 'leaning'],
];

/** The word for a probability (0 to 1) that one group is better than another. */
export const certaintyWord = (probability: number): CertaintyWord =>
  LIMITS.find(([least]) => probability >= least)?.[1] ?? 'cannot-tell';

/** A group is called the best only when it very probably is, and not on one or two batches. */
export const isNamedBest = (probabilityBest: number, batches: number): boolean =>
  probabilityBest >= 0.9 && batches >= 3;
