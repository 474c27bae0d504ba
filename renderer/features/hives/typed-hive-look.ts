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
