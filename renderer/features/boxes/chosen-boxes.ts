import { type BoxWalk, boxesBetween, neighbourOf } from './box-walk.ts';

/** Boxes chosen for one act, and the two ends of the span that was chosen last. */
export interface ChosenBoxes {
  readonly ids: ReadonlySet<string>;
  readonly from: string | null;
  readonly to: string | null;
}

export const NONE_CHOSEN: ChosenBoxes = { ids: new Set(), from: null, to: null };

/** One more, or one less. */
export function turnOver({ ids }: ChosenBoxes, id: string): ChosenBoxes {
  const turned = ids.has(id) ? [...ids].filter((one) => one !== id) : [...ids, id];
  return { ids: new Set(turned), from: id, to: id };
}

/** The span grows or shrinks to `to`; it begins where the last one did, if that ended at `at`, else at `at`. */
export function stretchTo(chosen: ChosenBoxes, walk: BoxWalk, at: string, to: string): ChosenBoxes {
  const from = chosen.to === at && chosen.from !== null ? chosen.from : at;
  return { ids: new Set(boxesBetween(walk, from, to)), from, to };
}

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

export interface KeyOutcome {
  readonly chosen: ChosenBoxes;
  /** The box that gets the focus; null = it stays. */
  readonly focus: string | null;
}

/**
 * What a key does while box `at` has the focus: arrows walk, with Shift they choose what lies between, Space turns one
 * over, Ctrl+A chooses all that are shown, Esc none. Null = the key is none of these.
 */
export function choosingKey(chosen: ChosenBoxes, walk: BoxWalk, at: string, key: Key): KeyOutcome | null {
  if (key.altKey) return null;
  if (key.ctrlKey || key.metaKey) {
    if (key.key.toLowerCase() !== 'a' || key.shiftKey) return null;
    return { chosen: { ids: new Set(walk.lines.flat()), from: null, to: null }, focus: null };
  }
  if (key.key === ' ') return { chosen: turnOver(chosen, at), focus: null };
  if (key.key === 'Escape') return chosen.ids.size > 0 ? { chosen: NONE_CHOSEN, focus: null } : null;
  const next = neighbourOf(walk, at, key.key);
  if (next === null) return null;
  return { chosen: key.shiftKey ? stretchTo(chosen, walk, at, next) : chosen, focus: next };
}
