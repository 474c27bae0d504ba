import { type KeyboardEvent, type MouseEvent, useState } from 'react';
import type { BoxWalk } from './box-walk.ts';
import { type ChosenBoxes, choosingKey, NONE_CHOSEN, stretchTo, turnOver } from './chosen-boxes.ts';

export interface Choosing {
  readonly ids: ReadonlySet<string>;
  /** A plain click or Enter opens a box; with Ctrl one more is chosen, with Shift all up to it. */
  readonly onClick: (walk: BoxWalk, id: string, event: MouseEvent) => void;
  readonly onKeyDown: (walk: BoxWalk, event: KeyboardEvent<HTMLElement>) => void;
  readonly clear: () => void;
}

/** Boxes chosen on the board or in the list, by keys or by the mouse. */
export function useChoosing(onOpen: (boxId: string) => void): Choosing {
  const [chosen, setChosen] = useState<ChosenBoxes>(NONE_CHOSEN);
  return {
    ids: chosen.ids,
    clear: () => setChosen(NONE_CHOSEN),
    onClick: (walk, id, event) => {
      if (event.ctrlKey || event.metaKey) setChosen(turnOver(chosen, id));
      else if (event.shiftKey) setChosen(stretchTo(chosen, walk, chosen.to ?? id, id));
      else onOpen(id);
    },
    onKeyDown: (walk, event) => {
      const { target, currentTarget } = event;
      const at = target instanceof HTMLElement ? target.dataset.box : undefined;
      const outcome = at === undefined ? null : choosingKey(chosen, walk, at, event);
      if (!outcome) return;
      event.preventDefault();
      setChosen(outcome.chosen);
      if (outcome.focus !== null)
        currentTarget.querySelector<HTMLElement>(`[data-box="${CSS.escape(outcome.focus)}"]`)?.focus();
    },
  };
}

/** A button is pressed when Space is let go; here Space chooses. */
export function keepSpace(event: KeyboardEvent<HTMLElement>): void {
  if (event.key === ' ' && event.target instanceof HTMLElement && event.target.dataset.box !== undefined)
    event.preventDefault();
}
