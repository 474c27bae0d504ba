import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { isOnAScreen, readWindowPlace, writeWindowPlace } from '../../../app/electron/window-place.ts';

const folder = mkdtempSync(join(tmpdir(), 'ripecell-place-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const PLACE = { x: 1400, y: 30, width: 1200, height: 700, maximised: true };
const LAPTOP = { x: 0, y: 0, width: 1366, height: 728 };
const SECOND = { x: 1366, y: -200, width: 1920, height: 1080 };

test('a place is read back as it was written, and leaves no half file', () => {
  const file = join(folder, 'window.json');
  writeWindowPlace(file, PLACE);
  expect(readWindowPlace(file)).toEqual(PLACE);
  expect(readdirSync(folder)).toEqual(['window.json']);
});

test.each([
  ['no file', null],
  ['half a file', '{"x":1,"y":2'],
  ['a window too small to see', JSON.stringify({ ...PLACE, width: 5 })],
  ['a place without its size', JSON.stringify({ x: 1, y: 2 })],
])('%s counts as no place', (_what, text) => {
  const file = join(folder, 'broken.json');
  rmSync(file, { force: true });
  if (text !== null) writeFileSync(file, text);
  expect(readWindowPlace(file)).toBeNull();
});

test('a folder that cannot be written does not stop the window from closing', () => {
  expect(() => writeWindowPlace(join(folder, 'none/window.json'), PLACE)).not.toThrow();
});

test.each([
  ['both screens are there', PLACE, [LAPTOP, SECOND], true],
  ['the second screen is gone', PLACE, [LAPTOP], false],
  ['it reaches half over the edge', { ...PLACE, x: 700 }, [LAPTOP], true],
  ['its title bar lies above the screen', { ...PLACE, x: 0, y: -20 }, [LAPTOP], false],
  ['its title bar lies below the screen', { ...PLACE, x: 0, y: 700 }, [LAPTOP], false],
  ['there is no screen', PLACE, [], false],
])('a remembered place when %s', (_when, place, screens, counts) => {
  expect(isOnAScreen(place, screens)).toBe(counts);
});
