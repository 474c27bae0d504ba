import type { AutumnBoxLine, AutumnView } from '../../../shared/contract/autumn-pairs.ts';
import type { BoxLine } from '../../../shared/contract/boxes.ts';
import { dayOfIso, isoOfDay, yearOfDay } from '../../../shared/kernel/day.ts';
import type { AutumnQueen, LeftReason, QueenClaim } from '../../../shared/model/autumn-pair.ts';
import type { BoxLook } from '../../../shared/model/look.ts';
import { type AutumnBox, autumnPairs } from '../../engine/boxes/autumn-pairs.ts';
import { comparedName } from '../../engine/queens/same-name.ts';
import type { Tables } from '../../workbook/workbook.ts';
import { BoxReader } from '../box-lines.ts';
import type { Desk } from '../operation.ts';
import { openPromise } from '../promise-lines.ts';
import { wishLines } from '../wish-lines.ts';

/** The boxes that hold something, and which of them could be united before winter. Nothing is changed. */
export function listAutumnPairs({ workbook: { tables }, today }: Desk): AutumnView {
  const reader = new BoxReader(tables, today);
  const held = tables.boxes
    .where({ retiredOn: null })
    .toSorted((a, b) => a.walkOrder - b.walkOrder)
    .map((box) => reader.line(box))
    .filter(({ state }) => state !== 'free')
    .map((line) => heldBox(tables, line));
  const wanted = queensStillWanted(tables);
  const notPromised = held.filter(({ box, promisedTo }) => box.queen === 'proved' && promisedTo === null).length;
  const claims = new Map(held.map((one) => [one.box.id, claimOf(one, wanted, notPromised)]));
  const boxes = held.map(({ box }) => ({ ...box, claim: claims.get(box.id) ?? null }));
  const { pairs, left } = autumnPairs(boxes, today);
  return {
    boxes: held.map(({ line, box }) => boxLine(line, box, claims.get(box.id) ?? null)),
    pairs,
    left: left.map(({ box, why }) => ({ box, why: leftLine(why) })),
    wanted,
    notPromised,
  };
}

interface HeldBox {
  readonly line: BoxLine;
  readonly box: AutumnBox;
  readonly promisedTo: string | null;
}

function heldBox(tables: Tables, line: BoxLine): HeldBox {
  const looks = tables.boxLooks
    .where({ boxId: line.id, placementId: line.placementId })
    .toSorted((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1));
  const queen = line.queenId === null ? null : tables.queens.get(line.queenId);
  const strong = looks.findLast(({ strength }) => strength !== null);
  const emergedOn = line.emergenceExpected;
  return {
    line,
    box: {
      id: line.id,
      yardId: line.yardId,
      walkOrder: line.walkOrder,
      boxType: line.boxType,
      strength: strong?.strength == null ? null : { value: strong.strength, on: dayOfIso(strong.lookedOn) },
      queen: queenOf(line, looks, queen?.provedOn ?? null),
      bornIn: queen?.bornIn ?? (emergedOn === null ? null : yearOfDay(dayOfIso(emergedOn))),
      claim: null,
      before: proposedBefore(line),
    },
    promisedTo: (queen && openPromise(tables, queen)?.promisedTo) ?? null,
  };
}

/** The bees of a drone-layer may be shaken out or united; the person chooses. */
function proposedBefore({ proposal, lastResult }: BoxLine): AutumnBox['before'] {
  if (proposal?.kind === 'give-cell') return 'give-cell';
  return proposal?.kind === 'shake-out' && lastResult !== 'drone-layer' ? 'shake-out' : null;
}

/** A queen once proved stays so while she is seen to lay; without a proposal that ends her story she may still come. */
function queenOf(line: BoxLine, looks: readonly BoxLook[], provedOn: string | null): AutumnQueen {
  const { state, lastResult } = line;
  const proposed = line.proposal?.kind ?? null;
  const isOver = proposed === 'unite' || proposed === 'give-cell' || proposed === 'shake-out';
  if (lastResult === 'gone') return 'bees-gone';
  if (lastResult === 'drone-layer') return 'drone-layer';
  if (lastResult === 'cell-failed') return 'none';
  if (state === 'laying' && (provedOn !== null || looks.some(({ result }) => result === 'proved'))) return 'proved';
  if (state === 'laying' || state === 'proved') return state;
  if (lastResult === 'none') return isOver ? 'none' : 'not-sure';
  if (isOver) return lastResult === 'cell' ? 'none' : 'given-up';
  return lastResult === null && proposed === 'look-again' ? 'not-sure' : 'on-the-way';
}

function claimOf({ box, promisedTo }: HeldBox, wanted: number, notPromised: number): QueenClaim | null {
  if (promisedTo !== null) return { kind: 'promised', to: promisedTo };
  if (box.queen !== 'proved') return null;
  return { kind: wanted === 0 ? 'spare' : wanted >= notPromised ? 'wanted' : 'perhaps' };
}

/** What open wishes still want, without the queens handed over and those promised to the same names. */
function queensStillWanted(tables: Tables): number {
  const byName = new Map<string, number>();
  for (const { forWhom, open } of wishLines(tables)) {
    const name = comparedName(forWhom ?? '');
    byName.set(name, (byName.get(name) ?? 0) + open);
  }
  for (const promise of tables.queenPromises.all()) {
    const queen = tables.queens.get(promise.queenId);
    const name = comparedName(promise.promisedTo);
    if (queen && openPromise(tables, queen)?.id === promise.id && byName.has(name))
      byName.set(name, Math.max(0, (byName.get(name) ?? 0) - 1));
  }
  return [...byName.values()].reduce((sum, queens) => sum + queens, 0);
}

const boxLine = (
  { id, code, yard, queenId, queenNumber }: BoxLine,
  { strength, queen, bornIn }: AutumnBox,
  claim: QueenClaim | null,
): AutumnBoxLine => ({
  id,
  code,
  yard,
  strength: strength && { value: strength.value, on: isoOfDay(strength.on) },
  queen,
  queenId,
  queenNumber,
  bornIn,
  claim,
});

const leftLine = (why: LeftReason): AutumnView['left'][number]['why'] =>
  'on' in why ? { ...why, on: isoOfDay(why.on) } : why;
