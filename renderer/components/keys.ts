import { type Command, goToPlace, PLACES } from '../../shared/contract/shell.ts';

/** The keys of the commands, the same as in the window's menu; used by the page where there is no native menu. */
const COMMAND_BY_KEY: Readonly<Record<string, Command>> = {
  'ctrl+n': 'new-batch',
  'ctrl+o': 'open-workbook',
  ...Object.fromEntries(PLACES.map((place, index) => [`ctrl+${index + 1}`, goToPlace(place)])),
  'ctrl+,': 'go-settings',
  'ctrl+k': 'go-to',
  'ctrl+e': 'type-looks',
  'ctrl+b': 'place-cells',
  'ctrl+r': 'report-slip',
  'ctrl+l': 'print-labels',
  'ctrl+z': 'undo',
  'ctrl+y': 'redo',
  'ctrl+shift+z': 'redo',
  'ctrl+p': 'print-view',
  'alt+arrowleft': 'back',
  'alt+arrowright': 'forward',
  f1: 'help',
};

/** The command a key press stands for, or null. */
export function commandOfKey(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>,
): Command | null {
  const ctrl = event.ctrlKey || event.metaKey;
  const held = `${ctrl ? 'ctrl+' : ''}${event.altKey ? 'alt+' : ''}${event.shiftKey ? 'shift+' : ''}`;
  return COMMAND_BY_KEY[`${held}${event.key.toLowerCase()}`] ?? null;
}
