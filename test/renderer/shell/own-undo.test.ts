import { expect, test } from 'vitest';
import { watchOwnUndo } from '../../../renderer/shell/own-undo.ts';

/** As much of a page as the watch looks at: events, and which element has the focus. */
function aPage() {
  const page = Object.assign(new EventTarget(), { activeElement: null as unknown });
  const tell = (kind: string, target: unknown, more: object = {}) => {
    const event = Object.assign(new Event(kind), more);
    Object.defineProperty(event, 'target', { value: target });
    page.dispatchEvent(event);
  };
  const own = watchOwnUndo(page as unknown as Document);
  return {
    holdsTyping: own.holdsTyping,
    focus(element: object) {
      page.activeElement = element;
      tell('focusin', element);
    },
    enter: (element: object) => tell('keydown', element, { key: 'Enter' }),
  };
}

const field = (tagName: 'INPUT' | 'TEXTAREA' | 'BUTTON', type = 'text') => ({ tagName, type, value: '' });

test.each(['INPUT', 'TEXTAREA'] as const)('letters typed in a %s since it got the focus are its own', (tagName) => {
  const page = aPage();
  const note = field(tagName);
  note.value = 'from before';
  page.focus(note);
  expect(page.holdsTyping()).toBe(false);
  note.value = 'from before, and more';
  expect(page.holdsTyping()).toBe(true);
  note.value = 'from before';
  expect(page.holdsTyping()).toBe(false);
});

test('a line is no longer its own once Enter has saved it, a text of several lines is', () => {
  const page = aPage();
  const line = field('INPUT');
  page.focus(line);
  line.value = '9';
  page.enter(line);
  expect(page.holdsTyping()).toBe(false);
  const text = field('TEXTAREA');
  page.focus(text);
  text.value = 'one\n';
  page.enter(text);
  expect(page.holdsTyping()).toBe(true);
});

test('buttons, boxes to tick and places without a field have nothing of their own', () => {
  const page = aPage();
  for (const element of [field('BUTTON'), field('INPUT', 'checkbox'), field('INPUT', 'radio')]) {
    page.focus(element);
    element.value = 'x';
    expect(page.holdsTyping()).toBe(false);
  }
  const note = field('INPUT');
  page.focus(note);
  note.value = 'x';
  page.focus(field('BUTTON'));
  expect(page.holdsTyping()).toBe(false);
});
