import { expect, test } from 'vitest';
import { commandOfKey } from '../../../renderer/components/keys.ts';

const press = (keys: string) => {
  const held = keys.split('+');
  const modifiers = {
    ctrlKey: held.includes('ctrl'),
    metaKey: held.includes('cmd'),
    altKey: held.includes('alt'),
    shiftKey: held.includes('shift'),
  };
  return commandOfKey({ key: held.at(-1) ?? '', ...modifiers });
};

// Ctrl+Z, Ctrl+Y and Ctrl+Shift+Z: the usual keys of the desktop systems (Windows and GNOME keyboard guides, from memory).
test.each([
  ['ctrl+z', 'undo'],
  ['cmd+z', 'undo'],
  ['ctrl+y', 'redo'],
  ['ctrl+shift+Z', 'redo'],
  ['cmd+shift+z', 'redo'],
  ['ctrl+k', 'go-to'],
  ['F1', 'help'],
  ['ctrl+p', 'print-view'],
  ['alt+ArrowLeft', 'back'],
  ['alt+ArrowRight', 'forward'],
  ['ctrl+alt+ArrowLeft', null],
  ['ArrowLeft', null],
  ['z', null],
  ['shift+Z', null],
  ['ctrl+alt+z', null],
  ['ctrl+shift+k', null],
])('%s stands for %s', (keys, command) => {
  expect(press(keys)).toBe(command);
});
