import { useEffect, useRef } from 'react';
import { type Command, goToPlace, PLACES } from '../../shared/contract/shell.ts';
import { shell } from '../client/client.ts';
import { commandOfKey } from '../components/keys.ts';
import { goTo } from '../components/routes.ts';
import { watchOwnUndo } from './own-undo.ts';

const ADDRESSES: Partial<Record<Command, string>> = {
  ...Object.fromEntries(PLACES.map((place) => [goToPlace(place), `/${place}`])),
  'new-batch': '/batches/new',
  'go-settings': '/settings',
  'go-history': '/history',
  'type-looks': '/boxes/looks',
  help: '/help',
};

/** The batch whose page is open; commands about "this batch" mean it. */
const openBatch = (): string | null => /^#\/batches\/(?!new)([^/?]+)/.exec(window.location.hash)?.[1] ?? null;

/** Carries out a command that only needs an address; false for those the frame itself must answer. */
export function followCommand(command: Command): boolean {
  const batch = openBatch();
  if (command === 'back' || command === 'forward') {
    if (command === 'back') window.history.back();
    else window.history.forward();
    return true;
  }
  if (command === 'print-labels') goTo(batch ? `/print?batch=${batch}` : '/print');
  else if (command === 'place-cells') goTo(batch ? `/batches/${batch}?open=place` : '/batches');
  else if (command === 'report-slip') goTo(batch ? `/batches/${batch}?open=seen` : '/batches');
  else if (ADDRESSES[command]) goTo(ADDRESSES[command]);
  else return false;
  return true;
}

/** Listens to the native menu in the window, and to the keys in a browser; the answer of the latest drawing is called. */
export function useCommands(answer: (command: Command) => void): void {
  const latest = useRef(answer);
  useEffect(() => {
    latest.current = answer;
  });
  useEffect(() => {
    let listening = true;
    const ownUndo = watchOwnUndo(document);
    const isOwn = (command: Command) => (command === 'undo' || command === 'redo') && ownUndo.holdsTyping();
    const listenToMenu = async () => {
      while (listening) {
        const next = await shell.nextCommand();
        if (!next.available || !listening) return;
        // A field gets its letters back also when the entry was clicked.
        if (isOwn(next.command)) document.execCommand(next.command);
        else latest.current(next.command);
      }
    };
    const listenToKeys = (event: KeyboardEvent) => {
      const command = commandOfKey(event);
      if (command === null || isOwn(command)) return;
      event.preventDefault();
      latest.current(command);
    };
    if (shell.kind === 'electron') void listenToMenu();
    window.addEventListener('keydown', listenToKeys);
    return () => {
      listening = false;
      ownUndo.stop();
      window.removeEventListener('keydown', listenToKeys);
    };
  }, []);
}
