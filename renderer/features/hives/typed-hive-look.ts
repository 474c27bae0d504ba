import type { HiveLook } from '../../../shared/model/look.ts';

/** One row as typed; what is no number stays as it was typed until it is mended. */
export interface TypedHiveLook {
  readonly strength: string;
  readonly food: string;
  readonly note: string;
}

export const EMPTY_LOOK: TypedHiveLook = { strength: '', food: '', note: '' };

export const typedLook = (look: HiveLook | null): TypedHiveLook =>
  look === null
    ? EMPTY_LOOK
    : { strength: look.strength?.toString() ?? '', food: look.food?.toString() ?? '', note: look.note };

export const isEmptyLook = ({ strength, food, note }: TypedHiveLook): boolean =>
  `${strength}${food}${note}`.trim() === '';

export const sameLook = (a: TypedHiveLook, b: TypedHiveLook): boolean =>
  a.strength.trim() === b.strength.trim() && a.food.trim() === b.food.trim() && a.note.trim() === b.note.trim();

/** An empty field is "not said". What is no digit goes to the core as 0, which it refuses with a sentence. */
const five = (text: string): number | null => {
  const typed = text.trim();
  if (typed === '') return null;
  return /^\d$/.test(typed) ? Number(typed) : 0;
};

export const lookOf = ({ strength, food, note }: TypedHiveLook): Pick<HiveLook, 'strength' | 'food' | 'note'> => ({
  strength: five(strength),
  food: five(food),
  note: note.trim(),
});

type Looks = ReadonlyMap<string, TypedHiveLook>;

interface ShownLooks {
  readonly typed: Looks;
  readonly saved: Looks;
}

/**
 * The rows after they were asked for anew, as after an undo: each follows the workbook, but for those being saved or
 * refused, and what is being typed stays. The same object where nothing changed.
 */
export function followedLooks(
  rows: readonly { readonly id: string; readonly typed: HiveLook | null }[],
  shown: ShownLooks,
  isBusy: (id: string) => boolean,
): ShownLooks {
  const typed = new Map(shown.typed);
  const saved = new Map(shown.saved);
  let same = true;
  for (const { id, typed: look } of rows) {
    const now = typedLook(look);
    const before = saved.get(id) ?? EMPTY_LOOK;
    if (isBusy(id) || sameLook(now, before)) continue;
    same = false;
    saved.set(id, now);
    if (sameLook(typed.get(id) ?? EMPTY_LOOK, before)) typed.set(id, now);
  }
  return same ? shown : { typed, saved };
}
