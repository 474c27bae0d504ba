// The packaged program started with a switch that would open it to others, through the double and the built main entry.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { debugSwitchIn } from '../../../app/electron/debug-switches.ts';
import { openWindow } from '../../../app/electron/window.ts';
import { wordsOf } from '../../../shared/text/catalogue.ts';
import { log } from '../../double/electron.ts';
import { OUT } from '../../journeys/doors.ts';

test('ends at once, before it takes a lock or opens anything', async () => {
  log.packaged = true;
  process.argv.push('--inspect=0.0.0.0:9229');
  await import(pathToFileURL(join(OUT, 'main/electron.js')).href);
  process.argv.pop();
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect([log.exits, log.order, log.windows]).toEqual([[1], [], []]);
});

test('its page cannot be looked into', () => {
  log.packaged = true;
  openWindow({ preload: 'preload.cjs', placeFile: '/nowhere/window.json', words: () => wordsOf('en').window });
  expect(log.windows.at(-1)?.options.webPreferences).toMatchObject({ devTools: false });
});

// Node: "Command-line API"; Chromium: "List of command line switches". Names from memory.
test.each([
  '--inspect',
  '--inspect=9229',
  '--inspect-brk',
  '--inspect-wait=127.0.0.1:1',
  '-inspect',
  '--INSPECT',
  '--remote-debugging-port=9222',
  '--remote-debugging-pipe',
  '--js-flags=--expose-gc',
  '--no-sandbox',
  '--disable-web-security',
])('%s is such a switch', (word) => {
  expect(debugSwitchIn(['ripecell', 'Season.ripecell', word])).toBe(word);
});

test.each(['--ripecell-data=/tmp/inspect', '/home/a/inspect.ripecell', '--inspection-notes', 'inspect', '--lang=en'])(
  '%s is none',
  (word) => {
    expect(debugSwitchIn(['--inspect', word])).toBeNull();
  },
);
