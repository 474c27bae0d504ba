// What the sources of the shells and the built page hold, by Electron's security checklist
// (electronjs.org/docs/latest/tutorial/security): items 1, 11, 15 and 17.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { OUT } from '../../journeys/doors.ts';

/** Names of formats and of pages in messages; no letter of them is ever fetched. */
const NAMES = [
  ...[
    'http://www.w3.org',
    'http://www.xfa.org',
    'http://ns.adobe.com',
    'http://json-schema.org',
    'https://json-schema.org',
  ],
  ...['https://react.dev', 'https://mui.com', 'https://redux.js.org', 'https://redux-toolkit.js.org', 'https://bit.ly'],
  ...['https://github.com', 'http://example.com', 'https://foo.bar', 'https://a', 'https://x'],
];

test('the built page names no address of another computer but those that only name something', () => {
  const built = readdirSync(join(OUT, 'renderer'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(html|css|m?js)$/.test(entry.name))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));
  expect(built.length).toBeGreaterThan(10);
  const named = new Set(built.flatMap((text) => text.match(/https?:\/\/[a-zA-Z0-9.-]+/g) ?? []));
  expect([...named].filter((address) => !NAMES.includes(address))).toEqual([]);
});

test('one place answers the page, and nothing is ever opened outside', () => {
  const folder = join(import.meta.dirname, '../../../app');
  const sources = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => [entry.name, readFileSync(join(entry.parentPath, entry.name), 'utf8')] as const);
  const using = (pattern: RegExp) => sources.filter(([, text]) => pattern.test(text)).map(([name]) => name);
  expect(using(/ipcMain\.(handle|on)/)).toEqual(['calls.ts']);
  expect(using(/openExternal\(|<webview|allowpopups/)).toEqual([]);
});
