// The page follows no script and no style that did not come with it, whatever a note or an import may smuggle in: tried on
// the real page with its real headers, by both ways in. Content Security Policy Level 3 and Trusted Types, both W3C.
import { describe, expect, test } from 'vitest';
import { prepareDoors } from './doors.ts';

const { doors } = prepareDoors();

/** What a planted script would try. */
const TRIED = {
  'markup as text': `document.createRange().createContextualFragment('<img src=x>')`,
  'a script as text': `document.createElement('script').text = 'window.planted = 1'`,
  'a worker by address': `new Worker('./assets/other.js')`,
  'code made from text': `new Function('return 1')()`,
  'a policy of its own': `trustedTypes.createPolicy('own', { createHTML: (text) => text })`,
} as const;

describe.each(doors)('the page of the $name', ({ open }) => {
  test('follows nothing that was planted', async () => {
    const { page } = await open();
    await page.getByRole('button', { name: 'Look at the demo' }).waitFor();
    for (const [what, code] of Object.entries(TRIED)) {
      // Later, on the page's own time: what the test says itself may do more than the page.
      const met = await page.evaluate(
        `new Promise((tell) => setTimeout(() => { try { ${code}; tell('got away'); } catch (error) { tell(error.name); } }))`,
      );
      expect(met, what).toMatch(/^(TypeError|EvalError)$/);
    }
    const followed = await page.evaluate(() => {
      const style = document.createElement('style');
      style.textContent = 'body { outline: 7px solid rgb(1, 2, 3); }';
      document.head.append(style);
      return getComputedStyle(document.body).outlineWidth;
    });
    expect(followed).not.toBe('7px');
  });
});
