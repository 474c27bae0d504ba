// Anything typed into any field breaks no page and loses no row: every text field of every page, also in folds and forms
// that must be opened, gets texts no form expects, drawn by fast-check from a fixed seed and from the usual list of troublesome ones.
import fc from 'fast-check';
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import { DEMO_DAY, openDemo, prepareDoors } from './doors.ts';
import { pagesOf, show } from './pages.ts';

const { open } = prepareDoors(DEMO_DAY);

/** Pages with a form that stands behind a choice, and the key or address that opens it. */
const BEHIND: readonly (readonly [title: string, more: string, key: string | null])[] = [
  ['26-01', '?open=seen', null],
  ['26-01', '?open=place', null],
  ['26-01', '?open=counts-taken', null],
  ['Queen 25-008', '', 'g'],
  ['Queen 25-008', '', 'h'],
];

interface Form {
  readonly address: string;
  readonly key: string | null;
}

/** Every page, and those with a form that must be opened first. */
async function formsOf(page: Page): Promise<readonly Form[]> {
  const pages = await pagesOf(page);
  const behind = BEHIND.map(([title, more, key]) => ({
    address: `${pages.find(([name]) => name === title)?.[1]}${more}`,
    key,
  }));
  return [...pages.map(([, address]) => ({ address, key: null })), ...behind];
}

/** Signs, numbers out of range, other scripts, markup, formulas; then whatever the generator finds. */
const TEXTS: readonly string[] = [
  '-1',
  '1e9',
  '٣',
  '∞',
  '<b onclick=alert(1)>',
  "'; DROP TABLE batch; --",
  '=1+1',
  '\u202Eabc',
  '👑'.repeat(40),
  'x'.repeat(3000),
  ...fc.sample(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), { numRuns: 10, seed: 20260601 }),
];

/** In the ordinary run every fifth field is typed into; in the long form (RIPECELL_LONG=1) each. */
const EVERY = process.env.RIPECELL_LONG ? 1 : 5;

/** Types into one field and leaves it; what is wrong with the page afterwards, or nothing. */
async function troubleWith(page: Page, field: Locator, text: string): Promise<string | null> {
  const label = await field.evaluate(
    (input: HTMLInputElement) => input.labels?.[0]?.textContent ?? input.ariaLabel ?? '',
  );
  await field.fill(text);
  await field.blur();
  await page.waitForTimeout(30);
  if (await page.getByText('This page failed.').count()) return `${label}: “${text.slice(0, 20)}” broke the page`;
  // The field may be drawn anew with what was saved; it must still be there under its name.
  const still = page.getByLabel(label, { exact: true });
  return (await still.count()) > 0 ? null : `${label}: “${text.slice(0, 20)}” took its row away`;
}

/** The field marked; or, where a day typed before has brought another sheet, the one of the same name on it. */
async function fieldOf(page: Page, mark: string, label: string): Promise<Locator | null> {
  const marked = page.locator(`[data-field="${mark}"]`);
  if ((await marked.count()) > 0) return marked;
  const named = page.getByLabel(label, { exact: true }).first();
  return (await named.count()) > 0 ? named : null;
}

test('no text breaks a page or takes a row away', async () => {
  const house = await open();
  const { page } = house;
  await openDemo(house);
  const found: string[] = [];
  let turn = 0;
  let met = 0;
  for (const { address, key } of await formsOf(page)) {
    await show(page, address);
    if (key) await page.keyboard.press(key);
    const marks = await page.evaluate(markFields);
    for (const { mark, label } of marks) {
      met += 1;
      if (met % EVERY !== 0) continue;
      const text = TEXTS[turn % TEXTS.length] ?? '';
      turn += 1;
      const field = await fieldOf(page, mark, label);
      const trouble = field === null ? `${label} is gone` : await troubleWith(page, field, text);
      if (trouble) found.push(`${address}: ${trouble}`);
    }
  }
  // A page that lost its form would show here.
  expect(met).toBeGreaterThan(120);
  expect(found).toEqual([]);
  expect(house.problems.filter((problem) => !/Failed to load resource/.test(problem))).toEqual([]);
}, 900_000);

/**
 * Opens every fold of the page and gives its text fields a mark, so that each can be found again whatever is drawn anew
 * around it; of fields that repeat in every row of a list, those of the first row.
 */
function markFields(): readonly { readonly mark: string; readonly label: string }[] {
  for (const fold of document.querySelectorAll('main details')) fold.setAttribute('open', '');
  const fields = [...document.querySelectorAll<HTMLInputElement>('main input, main textarea, [role="dialog"] input')];
  const seen = new Set<string>();
  const marks: { mark: string; label: string }[] = [];
  for (const field of fields) {
    if (
      ['checkbox', 'radio', 'file'].includes(field.type) ||
      field.disabled ||
      field.readOnly ||
      !field.checkVisibility()
    )
      continue;
    const label = field.labels?.[0]?.textContent ?? field.ariaLabel ?? '';
    const column = label.split(', ').at(-1) ?? '';
    if (seen.has(column) && column !== '') continue;
    seen.add(column);
    field.dataset.field = String(marks.length);
    marks.push({ mark: field.dataset.field, label });
  }
  return marks;
}
