// Runs the REAL built preload in a Chromium page and carries its calls to the handler that the REAL main entry registered.
// Every file of the page comes through the recorded app:// handler, so the real security headers apply.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { log } from './electron.ts';

/** A secure origin in place of app://, which plain Chromium does not know. */
const STAND_IN = 'https://ripecell.invalid';
const OWN = 'app://ripecell';

/** The sandbox of a preload: it may require `electron` and nothing else; what it exposes is frozen and by value. */
const sandboxed = (preload: string): string => `(() => {
  const module = { exports: {} };
  const invoke = window.__invoke;
  delete window.__invoke;
  const frozen = (value) => value && typeof value === 'object'
    ? Object.freeze(Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, frozen(inner)]))) : value;
  const electron = {
    ipcRenderer: { invoke: (channel, ...given) => invoke(channel, ...given.map((one) => structuredClone(one))) },
    contextBridge: { exposeInMainWorld: (name, value) => Object.defineProperty(window, name, { value: frozen(value) }) },
  };
  const require = (name) => {
    if (name !== 'electron') throw new Error('a sandboxed preload cannot require ' + name);
    return electron;
  };
  (function (require, module, exports) { ${preload} })(require, module, module.exports);
})();`;

export async function openWindowPage(page: Page, preloadFile: string, url: string): Promise<void> {
  await page.exposeFunction('__invoke', (channel: string, ...given: unknown[]) => {
    const handler = log.handlers.get(channel) as ((event: unknown, ...given: unknown[]) => unknown) | undefined;
    if (!handler) throw new Error(`No handler registered for '${channel}'`);
    const senderFrame = { url: page.url().replace(STAND_IN, OWN), parent: null };
    return handler({ sender: log.windows[0]?.webContents, senderFrame }, ...given);
  });
  await page.addInitScript({ content: sandboxed(readFileSync(preloadFile, 'utf8')) });
  await page.route(`${STAND_IN}/**`, async (route) => {
    const serve = log.schemes.get('app');
    if (!serve) return route.abort();
    const reply = await serve(new Request(route.request().url().replace(STAND_IN, OWN)));
    const body = Buffer.from(await reply.arrayBuffer());
    await route.fulfill({ status: reply.status, headers: Object.fromEntries(reply.headers), body });
  });
  await page.goto(url.replace(OWN, STAND_IN));
}
