/**
 * Runs in the page, as it would be printed: what is coloured, what can only be pressed, and what is wider than the paper.
 * Pictures are turned grey as a whole and are not read letter by letter.
 */
export function readPaper(): readonly string[] {
  const problems = new Set<string>();
  const over = document.documentElement.scrollWidth - document.documentElement.clientWidth;
  if (over > 0) problems.add(`wider than the page by ${over}px`);
  const ground = getComputedStyle(document.documentElement).backgroundColor;
  if (ground !== 'rgb(255, 255, 255)') problems.add(`the paper is ${ground}`);
  const shown = [...document.querySelectorAll<HTMLElement>('body *')].filter(
    (element) =>
      element.checkVisibility() && element.getClientRects().length > 0 && !element.closest('svg, .visually-hidden'),
  );
  for (const element of shown) {
    if (element.matches('.side, .topline, .strip, .legend, .MuiButton-root'))
      problems.add(`${element.className} is printed`);
    const words = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
    const { color } = getComputedStyle(element);
    if (words && !['rgb(0, 0, 0)', 'rgb(255, 255, 255)'].includes(color))
      problems.add(`${element.tagName}.${element.className} is ${color}`);
  }
  if (!document.querySelector('main h1')?.checkVisibility()) problems.add('no title');
  return [...problems].slice(0, 5);
}
