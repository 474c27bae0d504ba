import type { LookResult } from '../../../shared/model/look.ts';
import type { PlacementEnd } from '../../../shared/model/mating-box.ts';

export interface PlacementHistory {
  /** Results of the looks in the order they were made. */
  readonly results: readonly LookResult[];
  readonly end: PlacementEnd | null;
}

/** What became of one placed cell. null = not known (yet): it is in no denominator. */
export interface PlacementOutcome {
  readonly emerged: boolean | null;
  readonly mated: boolean | null;
  /** She was last seen to lay, proved or not. */
  readonly laying: boolean;
}

const SHOWS_A_QUEEN: ReadonlySet<LookResult> = new Set(['out', 'virgin', 'queen', 'laying', 'proved', 'drone-layer']);
const FOUND_WITHOUT: ReadonlySet<LookResult> = new Set(['none', 'gone']);
const ENDS_IN_LOSS: ReadonlySet<LookResult> = new Set(['drone-layer', 'none', 'gone', 'cell-failed']);

/**
 * Reads a placement's looks as the trade does. A box found without a queen counts as emerged unless its cell was seen
 * dead or torn down: otherwise the boxes where only success was noted would make mating look perfect (common practice,
 * no source). `not-looked` says nothing at all. Mated means sealed worker brood was seen, or a laying queen was caught
 * before it could be.
 */
export function placementOutcome({ results, end }: PlacementHistory): PlacementOutcome {
  const looked = results.filter((result) => result !== 'not-looked');
  const last = looked.at(-1) ?? null;
  return { emerged: hasEmerged(looked, end), mated: hasMated(looked, last, end), laying: isLaying(last) };
}

function hasEmerged(looked: readonly LookResult[], end: PlacementEnd | null): boolean | null {
  if (looked.some((result) => SHOWS_A_QUEEN.has(result)) || end === 'caught') return true;
  if (looked.includes('cell-failed')) return false;
  return looked.some((result) => FOUND_WITHOUT.has(result)) ? true : null;
}

function hasMated(looked: readonly LookResult[], last: LookResult | null, end: PlacementEnd | null): boolean | null {
  const lastProof = looked.lastIndexOf('proved');
  if (lastProof >= 0) return !looked.slice(lastProof).includes('drone-layer');
  if (last !== null && ENDS_IN_LOSS.has(last)) return false;
  if (end === 'failed' || end === 'shaken-out') return false;
  return end === 'caught' && looked.includes('laying') ? true : null;
}

const isLaying = (last: LookResult | null): boolean => last === 'laying' || last === 'proved';
