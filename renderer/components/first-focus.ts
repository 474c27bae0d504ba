/** For the one element of a page at which typing begins: it has the focus as soon as it appears. */
export function takeFirstFocus(element: HTMLElement | null): void {
  element?.focus({ preventScroll: true });
}
