import type { WishLine } from '../../shared/contract/season-plan.ts';
import { handedOverBy } from '../engine/queens/hand-over.ts';
import type { Tables } from '../workbook/workbook.ts';

/** The wishes, with what was handed over and what is still open: those still open by their day, then the others. */
export function wishLines(tables: Tables): readonly WishLine[] {
  const wishes = tables.wishes.all();
  const gone = (['given', 'sold'] as const).flatMap((place) => tables.queenMoves.where({ place }));
  const handedOver = handedOverBy(
    wishes,
    gone.flatMap(({ goneTo, movedOn }) => (goneTo === null ? [] : [{ to: goneTo, on: movedOn }])),
  );
  return wishes
    .map((wish) => {
      const there = handedOver.get(wish.id) ?? null;
      return { ...wish, handedOver: there, open: wish.settledOn === null ? wish.queens - (there ?? 0) : 0 };
    })
    .toSorted((a, b) => Number(a.open === 0) - Number(b.open === 0) || (a.wantedOn < b.wantedOn ? -1 : 1));
}
