import type { KeyboardEvent } from 'react';

/**
 * In a form typed from top to bottom, Enter goes to the next field and takes what stands in it to be typed over; after
 * the last one it reaches the button. Ctrl+Enter is left to the form: it finishes from anywhere.
 */
export function enterAdvances(event: KeyboardEvent<HTMLFormElement>): void {
  const { target } = event;
  if (event.key !== 'Enter' || event.ctrlKey || event.metaKey || event.altKey) return;
  if (!(target instanceof HTMLSelectElement || (target instanceof HTMLInputElement && target.type !== 'checkbox')))
    return;
  const fields = [
    ...event.currentTarget.querySelectorAll<HTMLElement>('input, select, textarea, button[type="submit"]'),
  ].filter((field) => field.checkVisibility() && !field.hasAttribute('disabled') && field.tabIndex >= 0);
  const next = fields[fields.indexOf(target) + 1];
  if (!next) return;
  event.preventDefault();
  next.focus();
  if (next instanceof HTMLInputElement) next.select();
}
