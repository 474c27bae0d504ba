// Presses Tab through a whole page and looks at each stop as a person without a mouse would.
import type { Page } from 'playwright';

const MOST_STOPS = 400;

/** What is wrong with the stops of this page: focus not to be seen, hidden behind something, or never reached. */
export async function walkByTab(page: Page): Promise<readonly string[]> {
  const wanted = await page.evaluate(markStops);
  const problems: string[] = [];
  const reached = new Set<string>();
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press('Tab');
    const { id, problem } = await page.evaluate(lookAtFocus);
    if (id === null || reached.has(id)) break;
    reached.add(id);
    if (problem) problems.push(problem);
  }
  const missed = wanted.filter(({ id }) => !reached.has(id));
  return [...problems, ...missed.map(({ what }) => `${what} is never reached`)].slice(0, 5);
}

/** Gives every stop a mark, and begins before the first. */
function markStops(): readonly { readonly id: string; readonly what: string }[] {
  const all = 'a[href], button, input, select, textarea, summary, [tabindex]';
  const stops = [...document.querySelectorAll<HTMLElement>(all)].filter(
    (element) =>
      element.tabIndex >= 0 &&
      !element.hasAttribute('disabled') &&
      element.checkVisibility({ visibilityProperty: true }),
  );
  for (const [index, element] of stops.entries()) element.dataset.stop = String(index);
  (document.activeElement as HTMLElement | null)?.blur();
  document.body.tabIndex = -1;
  document.body.focus();
  window.scrollTo(0, 0);
  return stops.map((element) => ({ id: element.dataset.stop ?? '', what: element.outerHTML.slice(0, 90) }));
}

/** WCAG 2.2: 2.4.7 focus visible, 2.4.11 focus not obscured (here: not even the middle of what is in the window). */
function lookAtFocus(): { readonly id: string | null; readonly problem: string | null } {
  /** Pixels that must be in the window: half a line. */
  const LEAST_SEEN = 10;
  const at = document.activeElement as HTMLElement | null;
  const id = at?.dataset.stop ?? null;
  if (!at || id === null) return { id: null, problem: null };
  const framed = [at, at.closest<HTMLElement>('.control')].some((element) => {
    if (!element) return false;
    const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2 && outlineColor !== 'rgba(0, 0, 0, 0)';
  });
  const what = at.outerHTML.slice(0, 90);
  if (!framed) return { id, problem: `${what} has the focus and does not show it` };
  const box = at.getBoundingClientRect();
  // A browser brings the caret of a tall field into the window, not the whole field: what counts is the part in sight.
  const [left, right] = [Math.max(0, box.left), Math.min(window.innerWidth, box.right)];
  const [up, down] = [Math.max(0, box.top), Math.min(window.innerHeight, box.bottom)];
  if (down - up < Math.min(box.height, LEAST_SEEN)) return { id, problem: `${what} has the focus behind the edge` };
  const top = document.elementFromPoint((left + right) / 2, (up + down) / 2);
  const seen = top !== null && (at.contains(top) || top.contains(at) || top.closest('label')?.control === at);
  return { id, problem: seen ? null : `${what} has the focus behind ${top?.outerHTML.slice(0, 60)}` };
}
