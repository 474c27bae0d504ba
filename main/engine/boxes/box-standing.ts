import { addDays, type Day, laterOf } from '../../../shared/kernel/day.ts';
import type { CellsComing } from '../../../shared/model/box-proposal.ts';
import type { LookResult } from '../../../shared/model/look.ts';

export interface StandingLook {
  readonly on: Day;
  readonly result: LookResult;
  /** 1 to 5; null = not typed. */
  readonly strength: number | null;
}

/** A box that holds a cell or queen, as the workbook knows it on one day. Days are civil day numbers. */
export interface BoxStanding {
  readonly today: Day;
  readonly placedOn: Day;
  readonly emergenceOn: Day;
  /** Looks since the cell was put in that said something, oldest first; "not looked" is not among them. */
  readonly looks: readonly StandingLook[];
  /** The first look for eggs: the soonest and the expected day. */
  readonly firstLook: { readonly earliest: Day; readonly expected: Day };
  readonly emergenceCheckOn: Day;
  readonly sealedBroodLookOn: Day;
  readonly lateOn: Day;
  readonly giveUpOn: Day;
  /** Spans in which the box must be left alone, ends included. */
  readonly handsOff: readonly { readonly from: Day; readonly to: Day }[];
  /** The nearest ripe cells that still want a box; null when none come soon. */
  readonly cellsComing: CellsComing | null;
}

export const lastLookOf = ({ looks }: BoxStanding): StandingLook | null => looks.at(-1) ?? null;

/** The first day from `day` on that does not lie in a hands-off span. */
export function openDay({ handsOff }: BoxStanding, day: Day): Day {
  const shut = handsOff.find((span) => span.from <= day && day <= span.to);
  return shut ? addDays(shut.to, 1) : day;
}

/** The day brood was last seen in the box; a box in which none was seen has been without since its cell came. */
export function broodlessSince({ looks, placedOn }: Pick<BoxStanding, 'looks' | 'placedOn'>): Day {
  const brood = looks.findLast((look) => look.result === 'laying' || look.result === 'proved');
  return laterOf(brood?.on ?? placedOn, placedOn);
}

export const broodlessDays = (box: BoxStanding): number => box.today - broodlessSince(box);

/** The strength typed last, if any was. */
export const strengthOf = ({ looks }: BoxStanding): number | null =>
  looks.findLast((look) => look.strength !== null)?.strength ?? null;
