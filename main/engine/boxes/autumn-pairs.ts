import { BOX_TURNAROUND, WEAK_STRENGTH } from '../../../shared/biology/box-turnaround.ts';
import type { Day } from '../../../shared/kernel/day.ts';
import type { Id } from '../../../shared/kernel/id.ts';
import type {
  AutumnPair,
  AutumnPairs,
  AutumnQueen,
  JoinReason,
  LeftBox,
  LeftReason,
  OutReason,
  QueenClaim,
} from '../../../shared/model/autumn-pair.ts';
import type { BoxType } from '../../../shared/model/method.ts';

/** A mating box that holds something, as the workbook knows it before winter. Days are civil day numbers. */
export interface AutumnBox {
  readonly id: Id;
  /** null = no yard named; such boxes count as standing together, as on the board. */
  readonly yardId: Id | null;
  readonly walkOrder: number;
  readonly boxType: BoxType;
  /** The strength typed last, 1 to 5, and when; null = never typed, which is not weak. */
  readonly strength: { readonly value: number; readonly on: Day } | null;
  readonly queen: AutumnQueen;
  /** The year she came out of her cell. */
  readonly bornIn: number | null;
  /** null where nothing is said of her. */
  readonly claim: QueenClaim | null;
  /**
   * What is proposed for it already and goes before: shaking out bees whose workers may lay, which are never united, or
   * a ripe cell that is at hand.
   */
  readonly before: 'shake-out' | 'give-cell' | null;
}

/**
 * Which boxes could be united before winter, and why; every box is in one pair or named as left. The weakest are paired
 * first, each with the nearest box in walking order of the same yard and build. A weak one goes to a stronger one that is
 * not weak itself; one that lacks only a proved queen goes to one that has her and is not weak. The queen that stays is
 * always proved; a box whose queen may still come to lay, or whose strength is not known of late, is in no pair. Weak is
 * WEAK_STRENGTH or less. That weak boxes are united with strong ones, the older queen out, is common practice, no source.
 */
export function autumnPairs(boxes: readonly AutumnBox[], today: Day): AutumnPairs {
  const left = new Map<Id, LeftReason>();
  const ready: ReadyBox[] = [];
  for (const box of boxes) {
    const why = whyNotReady(box, today);
    if (why) left.set(box.id, why);
    else if (box.strength) ready.push({ ...box, strength: box.strength.value });
  }
  const pairs: AutumnPair[] = [];
  const paired = new Set<Id>();
  for (const box of ready.filter(wantsJoining).toSorted(byNeed)) {
    if (paired.has(box.id)) continue;
    const neighbour = nearest(
      box,
      ready.filter((other) => other.id !== box.id && !paired.has(other.id) && canTake(other, box)),
    );
    if (!neighbour) continue;
    pairs.push(pairOf(box, neighbour));
    paired.add(box.id).add(neighbour.id);
  }
  for (const box of ready) left.set(box.id, { kind: wantsJoining(box) ? 'no-neighbour' : 'stays' });
  return {
    pairs,
    left: boxes.flatMap(({ id }): readonly LeftBox[] => {
      const why = left.get(id);
      return why && !paired.has(id) ? [{ box: id, why }] : [];
    }),
  };
}

/** A box whose strength is known and whose queen, or her absence, is settled. */
type ReadyBox = Omit<AutumnBox, 'strength'> & { readonly strength: number };

function whyNotReady({ queen, strength, before }: AutumnBox, today: Day): LeftReason | null {
  if (queen === 'bees-gone') return { kind: 'bees-gone' };
  if (before === 'shake-out') return { kind: 'workers-may-lay' };
  if (before === 'give-cell') return { kind: 'cell-at-hand' };
  if (queen === 'not-sure') return { kind: 'look-again' };
  if (queen === 'on-the-way') return { kind: 'on-the-way' };
  if (strength === null) return { kind: 'strength-unknown' };
  if (today - strength.on > BOX_TURNAROUND.strengthHolds.value) return { kind: 'strength-old', on: strength.on };
  if (queen === 'laying' && strength.value > WEAK_STRENGTH) return { kind: 'not-proved-yet' };
  return null;
}

const isWeak = ({ strength }: ReadyBox): boolean => strength <= WEAK_STRENGTH;
const isProved = ({ queen }: ReadyBox): boolean => queen === 'proved';
const wantsJoining = (box: ReadyBox): boolean => isWeak(box) || !isProved(box);
const byNeed = (a: ReadyBox, b: ReadyBox): number => a.strength - b.strength || a.walkOrder - b.walkOrder;

function canTake(other: ReadyBox, box: ReadyBox): boolean {
  const together = other.yardId === box.yardId && other.boxType === box.boxType;
  const oneIsProved = isProved(other) || isProved(box);
  return together && oneIsProved && !isWeak(other);
}

const nearest = (box: ReadyBox, others: readonly ReadyBox[]): ReadyBox | null =>
  others.toSorted(
    (a, b) =>
      Math.abs(a.walkOrder - box.walkOrder) - Math.abs(b.walkOrder - box.walkOrder) ||
      b.strength - a.strength ||
      a.walkOrder - b.walkOrder,
  )[0] ?? null;

function pairOf(joined: ReadyBox, keeper: ReadyBox): AutumnPair {
  const out = queenOut(joined, keeper);
  const bespoken = out !== null && out.claim !== null && out.claim.kind !== 'spare';
  return {
    joined: joined.id,
    keeper: keeper.id,
    why: whyJoined(joined),
    out,
    first: out === null ? 'look-through' : bespoken ? 'give-or-cage' : 'take-out',
  };
}

function whyJoined(box: ReadyBox): readonly JoinReason[] {
  const weak: readonly JoinReason[] = isWeak(box) ? [{ kind: 'weak', strength: box.strength }] : [];
  if (box.queen === 'none') return [...weak, { kind: 'no-queen' }];
  return box.queen === 'given-up' || box.queen === 'drone-layer' ? [...weak, { kind: box.queen }] : weak;
}

/** Of two queens the one that is not proved comes out, else the older one, else that of the weaker box. */
function queenOut(joined: ReadyBox, keeper: ReadyBox): AutumnPair['out'] {
  const out = (box: ReadyBox, reason: OutReason) => ({ box: box.id, reason, claim: box.claim });
  if (joined.queen === 'none' || keeper.queen === 'none') return null;
  for (const box of [joined, keeper]) {
    if (box.queen === 'drone-layer' || box.queen === 'given-up') return out(box, { kind: box.queen });
    if (!isProved(box)) return out(box, { kind: 'not-proved' });
  }
  if (joined.bornIn === null || keeper.bornIn === null) return out(joined, { kind: 'year-unknown' });
  if (joined.bornIn === keeper.bornIn) return out(joined, { kind: 'same-year', bornIn: joined.bornIn });
  const years = { bornIn: Math.min(joined.bornIn, keeper.bornIn), otherBornIn: Math.max(joined.bornIn, keeper.bornIn) };
  return out(joined.bornIn < keeper.bornIn ? joined : keeper, { kind: 'older', ...years });
}
