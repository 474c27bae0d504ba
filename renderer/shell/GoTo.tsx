import { Dialog, InputBase } from '@mui/material';
import { type KeyboardEvent, useState } from 'react';
import type { Command } from '../../shared/contract/shell.ts';
import { ask } from '../client/client.ts';
import { useAnswer } from '../client/hooks.ts';
import { goTo } from '../components/routes.ts';
import { useWords } from '../components/words.ts';
import { findPlaces, notesPlace, type Place } from './find-places.ts';

interface GoToProps {
  /** What was typed before this was here. */
  readonly begun: string;
  readonly onClose: () => void;
  readonly onCommand: (command: Command) => void;
}

/** Find a box, hive, queen, batch, page or command by a few letters. */
export function GoTo({ begun, onClose, onCommand }: GoToProps) {
  const words = useWords();
  const [typed, setTyped] = useState(begun);
  const [chosen, setChosen] = useState(0);
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
  const found = typed.trim() === '' ? places : [...places, notesPlace(typed, words)];
  const follow = (place: Place | undefined) => {
    if (!place) return;
    onClose();
    if ('address' in place.to) goTo(place.to.address);
    else onCommand(place.to.command);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown') setChosen(Math.min(found.length - 1, chosen + 1));
    else if (event.key === 'ArrowUp') setChosen(Math.max(0, chosen - 1));
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
        <div id="go-to-list" role="listbox" aria-label={words.frame.goTo}>
          {found.map((place, index) => (
            <div
              key={`${place.kind} ${place.name}`}
              id={`go-to-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === chosen}
              onClick={() => follow(place)}
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
        {typed !== '' && places.length === 0 ? <p role="status">{words.frame.goToNothing}</p> : null}
      </div>
    </Dialog>
  );
}
