/** The stages of a batch in their order: larvae given, cells taken and sealed, queens emerged and laying. */
export const COUNT_STAGES = ['given', 'taken', 'sealed', 'emerged', 'laying'] as const;
export type CountStage = (typeof COUNT_STAGES)[number];

/** Whole cells or queens at each stage; null or missing = not counted (yet), which is never 0. */
export type StageCounts = Partial<Readonly<Record<CountStage, number | null>>>;

/**
 * Cells that entered a stage, where fewer did than came out of the one before: given away, culled or not put in boxes.
 * They are no loss and leave the denominator. Missing = all of them entered.
 */
export type EnteredCounts = Partial<Readonly<Record<Exclude<CountStage, 'given'>, number | null>>>;

/** What is wrong with counts, with the fields concerned in their order. */
export type CountTrouble =
  | { readonly kind: 'notAWholeNumber'; readonly field: CountStage }
  | { readonly kind: 'enteredNotAWholeNumber'; readonly field: CountStage }
  | { readonly kind: 'moreThanEarlier'; readonly field: CountStage; readonly earlier: CountStage }
  | { readonly kind: 'moreThanEntered'; readonly field: CountStage }
  | { readonly kind: 'enteredMoreThanEarlier'; readonly field: CountStage; readonly earlier: CountStage };

const isCount = (cells: unknown): boolean => typeof cells === 'number' && Number.isInteger(cells) && cells >= 0;

/**
 * Contradictions in a batch's counts, stage by stage; an empty list means none. A count may not be larger than the
 * nearest earlier one that was counted, whatever is missing between. The rule is our own definition.
 */
export function checkStageCounts(counts: StageCounts, entered: EnteredCounts = {}): readonly CountTrouble[] {
  const troubles: CountTrouble[] = [];
  let earlier: { readonly stage: CountStage; readonly cells: number } | null = null;
  for (const stage of COUNT_STAGES) {
    const cells = counts[stage] ?? null;
    const went = stage === 'given' ? null : (entered[stage] ?? null);
    if (went !== null) {
      if (!isCount(went)) troubles.push({ kind: 'enteredNotAWholeNumber', field: stage });
      else if (earlier && went > earlier.cells)
        troubles.push({ kind: 'enteredMoreThanEarlier', field: stage, earlier: earlier.stage });
    }
    if (cells === null) continue;
    if (!isCount(cells)) {
      troubles.push({ kind: 'notAWholeNumber', field: stage });
      continue;
    }
    if (earlier && cells > earlier.cells)
      troubles.push({ kind: 'moreThanEarlier', field: stage, earlier: earlier.stage });
    else if (went !== null && cells > went) troubles.push({ kind: 'moreThanEntered', field: stage });
    earlier = { stage, cells };
  }
  return troubles;
}

/** A stage of which both ends were counted. */
export interface UsablePair {
  readonly stage: Exclude<CountStage, 'given'>;
  readonly successes: number;
  readonly of: number;
}

/** Stages with both ends counted; a gap makes the two neighbouring stages unusable and is never filled in. */
export function usablePairs(counts: StageCounts, entered: EnteredCounts = {}): readonly UsablePair[] {
  const pairs: UsablePair[] = [];
  let before = counts.given ?? null;
  for (const stage of LATER_STAGES) {
    const of = entered[stage] ?? before;
    const successes = counts[stage] ?? null;
    if (of !== null && successes !== null) pairs.push({ stage, successes, of });
    before = successes;
  }
  return pairs;
}

const LATER_STAGES = ['taken', 'sealed', 'emerged', 'laying'] as const satisfies readonly CountStage[];
