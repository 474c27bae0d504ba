import { Dialog, InputBase } from '@mui/material';
import { type KeyboardEvent, useEffect, useState } from 'react';
import type { Command } from '../../shared/contract/shell.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { goTo } from '../components/routes.ts';
import { useWords } from '../components/words.ts';
import { findPlaces, notesPlace, type Place } from './find-places.ts';
import type { Ahead } from './TypedAhead.tsx';

interface GoToProps {
  readonly begun: Ahead;
  readonly onClose: () => void;
  readonly onCommand: (command: Command) => void;
}

/** Find a box, hive, queen, batch, page or command by a few letters. */
export function GoTo({ begun, onClose, onCommand }: GoToProps) {
  const words = useWords();
  const [typed, setTyped] = useState(begun.letters);
  const [chosen, setChosen] = useState(0);
  const { places, listed } = usePlaces(typed);
  // Enter may come before the lists: what was typed is followed when they are here.
  const [entered, setEntered] = useState(begun.entered);
  const found = typed.trim() === '' ? places : [...places, notesPlace(typed, words)];
  const follow = (place: Place | undefined) => {
    if (!place) return;
    onClose();
    if ('address' in place.to) goTo(place.to.address);
    else onCommand(place.to.command);
  };
  useEffect(() => {
    if (entered && listed) follow(found[chosen]);
  });
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown') setChosen(Math.min(found.length - 1, chosen + 1));
    else if (event.key === 'ArrowUp') setChosen(Math.max(0, chosen - 1));
    else if (event.key === 'Enter' && !listed) setEntered(true);
    else if (event.key === 'Enter') follow(found[chosen]);
    else return;
    event.preventDefault();
  };
  return (
    <Dialog open onClose={onClose} fullWidth maxWidth="sm" aria-label={words.frame.goTo}>
      <div style={{ padding: 18 }} className="stack">
        <InputBase
          autoFocus
          className="control"
          value={typed}
          placeholder={words.frame.goToHint}
          onChange={(event) => {
            setTyped(event.target.value);
            setChosen(0);
            setEntered(false);
          }}
          onKeyDown={onKeyDown}
          slotProps={{
            input: {
              'aria-label': words.frame.goToHint,
              role: 'combobox',
              'aria-expanded': true,
              'aria-controls': 'go-to-list',
              'aria-activedescendant': found[chosen] ? `go-to-${chosen}` : undefined,
            },
          }}
        />
        <Found found={found} chosen={chosen} onFollow={follow} onKeyDown={onKeyDown} />
        {typed !== '' && places.length === 0 ? <p role="status">{words.frame.goToNothing}</p> : null}
      </div>
    </Dialog>
  );
}

interface FoundProps {
  readonly found: readonly Place[];
  readonly chosen: number;
  readonly onFollow: (place: Place) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

function Found({ found, chosen, onFollow, onKeyDown }: FoundProps) {
  const { frame } = useWords();
  return (
    <div id="go-to-list" role="listbox" aria-label={frame.goTo}>
      {found.map((place, index) => (
        <div
          key={`${place.kind} ${place.name}`}
          id={`go-to-${index}`}
          role="option"
          tabIndex={-1}
          aria-selected={index === chosen}
          onClick={() => onFollow(place)}
          onKeyDown={onKeyDown}
          style={{
            padding: '8px 10px',
            cursor: 'pointer',
            borderInlineStart: `4px solid ${index === chosen ? 'var(--accent)' : 'transparent'}`,
          }}
        >
          <strong>{place.name}</strong> <span className="soft">{place.kind}</span>
        </div>
      ))}
    </div>
  );
}

/** What is found for the letters so far; `listed` once all that could be found is known. */
function usePlaces(typed: string): { readonly places: readonly Place[]; readonly listed: boolean } {
  const words = useWords();
  const batches = useAnswer(['batches'], () => ask.batches.listBatches.query());
  const hives = useAnswer(['hives'], () => ask.hives.listHives.query());
  const boxes = useAnswer(['boxes'], () => ask.boxes.listBoxes.query());
  const queens = useAnswer(['queens'], () => ask.queens.listQueens.query());
  const places = findPlaces(typed, {
    words,
    batches: batches.data ?? [],
    hives: hives.data?.hives ?? [],
    boxes: boxes.data ?? [],
    queens: queens.data ?? [],
  });
  const listed = [batches, hives, boxes, queens].every((list) => list.data !== undefined || list.isError);
  return { places, listed };
}
