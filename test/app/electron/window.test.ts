// The desktop shell through the double: the real built main entry sets everything up, the test looks at what it set and
// fires events at it. The list checked is Electron's own security checklist (electronjs.org/docs/latest/tutorial/security).
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { CALL_CHANNEL, type CallReply } from '../../../shared/contract/call.ts';
import { app, log } from '../../double/electron.ts';
import { OUT } from '../../journeys/doors.ts';

beforeAll(async () => {
  log.folder = mkdtempSync(join(tmpdir(), 'ripecell-window-'));
  await import(pathToFileURL(join(OUT, 'main/electron.js')).href);
  await vi.waitFor(() => expect([...log.errors, log.windows.length]).toEqual([1]), { timeout: 30_000 });
});
afterAll(() => {
  app.quit();
  rmSync(log.folder, { recursive: true, force: true });
});

const window = () => {
  const [first] = log.windows;
  if (!first) throw new Error('no window');
  return first;
};
type Handler = (event: unknown, request: unknown) => Promise<CallReply>;
const call = (event: unknown, request: unknown) =>
  (log.handlers.get(CALL_CHANNEL) as unknown as Handler)(event, request);
const own = (url = 'app://ripecell/') => ({ sender: window().webContents, senderFrame: { url, parent: null } });
const STATE = { kind: 'query', path: 'workbook.getWorkbookState' };

describe('the window', () => {
  test('is sandboxed, isolated and without Node', () => {
    // All there are: nothing insecure, experimental or of the engine's own features is switched on.
    expect(window().options.webPreferences).toEqual({
      preload: expect.stringMatching(/preload\.cjs$/),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
      devTools: true,
    });
    expect(window().options).toMatchObject({ minWidth: 1024, minHeight: 640, show: false });
    expect(window().url).toBe('app://ripecell/');
  });

  test('takes the single-instance lock and the sandbox before anything else', () => {
    expect(log.order.slice(0, 4)).toEqual([
      'requestSingleInstanceLock',
      'enableSandbox',
      'registerSchemes',
      'whenReady',
    ]);
    expect(log.privileged).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  test.each([
    'https://example.org/',
    'http://127.0.0.1/',
    'file:///etc/passwd',
    'javascript:alert(1)',
    'data:text/html,x',
    'blob:https://x/1',
    'app://host.evil/',
    'app://ripecell.evil/',
    'app://ripecell@evil/',
    'app://user:pw@ripecell/',
    'APP://RIPECELL.evil',
    'ftp://x',
    'about:blank',
    'chrome://settings',
    'view-source:app://ripecell/',
    'app:ripecell',
    '',
    '//ripecell/',
    'ws://ripecell',
    'mailto:a@b',
    'tel:1',
    'vbscript:x',
    'filesystem:app://ripecell/x',
    'devtools://x',
    'smb://x',
    'app://127.0.0.1/',
    'app://localhost/',
    'app://',
    'http://ripecell/',
    'https://ripecell/',
  ])('refuses to go to "%s"', (url) => {
    for (const event of ['will-navigate', 'will-redirect', 'will-frame-navigate'])
      expect(window().webContents.refuses(event, url), event).toBe(true);
    expect(window().webContents.openHandler?.({ url })).toEqual({ action: 'deny' });
  });

  test('stays on its own page, and attaches no webview', () => {
    expect(window().webContents.refuses('will-navigate', 'app://ripecell/index.html')).toBe(false);
    expect(window().webContents.refuses('will-attach-webview', '')).toBe(true);
    expect(log.opened).toEqual([]);
  });

  test('downloads nothing', () => {
    const preventDefault = vi.fn();
    (log.sessionEvents.get('will-download') as unknown as (event: unknown) => void)({ preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
  });

  test('loads its page anew when the page’s process ends, but not for ever', () => {
    const loads = () => log.order.filter((one) => one === 'loadURL').length;
    const before = loads();
    const end = (reason: string) => window().webContents.emit('render-process-gone', {}, { reason, exitCode: 5 });
    end('clean-exit');
    expect(loads()).toBe(before);
    for (const reason of ['crashed', 'oom', 'killed']) end(reason);
    expect([loads(), log.errors]).toEqual([before + 3, []]);
    end('crashed');
    expect(loads()).toBe(before + 3);
    expect(log.errors.pop()).toContain('failed several times');
    expect(window().url).toBe('app://ripecell/');
  });

  test.each([
    'media',
    'geolocation',
    'notifications',
    'midi',
    'clipboard-read',
    'fullscreen',
    'openExternal',
    'hid',
    'usb',
    'unknown',
  ])('denies the permission %s', (permission) => {
    let answer: unknown;
    (log.permission.request as unknown as (...given: unknown[]) => void)(null, permission, (granted: boolean) => {
      answer = granted;
    });
    expect(answer).toBe(false);
    expect((log.permission.check as unknown as (...given: unknown[]) => boolean)(null, permission)).toBe(false);
    expect((log.permission.device as unknown as (...given: unknown[]) => boolean)({})).toBe(false);
  });

  test.each([
    ['https://example.org/x.js', true],
    ['http://127.0.0.1:8080/', true],
    ['file:///etc/passwd', true],
    ['app://ripecell/index.html', false],
    ['blob:app://ripecell/1', false],
  ])('cancels a request to %s: %s', (url, cancel) => {
    let answer: unknown;
    (log.beforeRequest as unknown as (...given: unknown[]) => void)({ url }, (given: unknown) => {
      answer = given;
    });
    expect(answer).toEqual({ cancel });
  });
});

describe('the one call', () => {
  test('answers the own page', async () => {
    expect(await call(own(), STATE)).toMatchObject({ ok: true, data: { open: null } });
  });

  test.each([
    ['a foreign page', { senderFrame: { url: 'https://example.org/', parent: null } }],
    ['a page of a similar host', { senderFrame: { url: 'app://ripecell.evil/', parent: null } }],
    ['no frame at all', { senderFrame: null }],
    ['a frame inside the page', { senderFrame: { url: 'app://ripecell/', parent: {} } }],
    ['an unknown sender', { sender: {} }],
  ])('refuses %s', async (_who, changes) => {
    expect(await call({ ...own(), ...changes }, STATE)).toMatchObject({
      ok: false,
      error: { data: { code: 'FORBIDDEN' } },
    });
  });

  test.each([
    undefined,
    null,
    7,
    'x',
    {},
    { kind: 'query' },
    { kind: 'delete', path: 'x' },
    { ...STATE, extra: 1 },
    { kind: 'query', path: 'x'.repeat(200) },
  ])('says of %j that it is no call', async (request) => {
    expect(await call(own(), request)).toMatchObject({ ok: false });
  });

  test('saves a file through the dialog, and says when the place cannot be written', async () => {
    log.answers.save = join(log.folder, 'labels.pdf');
    const input = { name: 'labels.pdf', base64: Buffer.from('%PDF').toString('base64') };
    const saved = await call(own(), { kind: 'mutation', path: 'shell.saveFile', input });
    expect(saved).toEqual({ ok: true, data: { available: true, path: log.answers.save, failed: false } });
    expect(readFileSync(log.answers.save, 'utf8')).toBe('%PDF');
    log.answers.save = join(log.folder, 'no-such-folder', 'labels.pdf');
    expect(await call(own(), { kind: 'mutation', path: 'shell.saveFile', input })).toMatchObject({
      data: { failed: true },
    });
    expect(await call(own(), { kind: 'mutation', path: 'shell.saveFile', input: { name: '' } })).toMatchObject({
      ok: false,
    });
    expect(await call(own(), { kind: 'mutation', path: 'shell.nothing' })).toEqual({
      ok: true,
      data: { available: false },
    });
  });

  test('hands menu commands to the page one after the other', async () => {
    const next = () => call(own(), { kind: 'mutation', path: 'shell.nextCommand' });
    const waiting = next();
    entry('go-hives').click();
    expect(await waiting).toEqual({ ok: true, data: { available: true, command: 'go-hives' } });
    entry('help').click();
    expect(await next()).toMatchObject({ data: { command: 'help' } });
  });
});

interface Entry {
  readonly id?: string;
  readonly label?: string;
  readonly role?: string;
  readonly accelerator?: string;
  readonly registerAccelerator?: boolean;
  readonly submenu?: readonly Entry[];
  readonly click: () => void;
}
const entries = (): readonly Entry[] =>
  ((log.menus.at(-1)?.template ?? []) as readonly Entry[]).flatMap((menu) => menu.submenu ?? []);
const entry = (id: string): Entry => {
  const found = entries().find((one) => one.id === id);
  if (!found) throw new Error(`no menu entry ${id}`);
  return found;
};

describe('the menu', () => {
  test('has no accelerator twice, and no stock reload', () => {
    const accelerators = entries().flatMap((one) => one.accelerator ?? []);
    expect(accelerators.length).toBeGreaterThan(15);
    expect(new Set(accelerators).size).toBe(accelerators.length);
    expect(entries().map((one) => one.role)).not.toContain('reload');
    expect(entry('report-slip').accelerator).toBe('CmdOrCtrl+R');
  });
  test('shows the keys of undo and redo, and leaves them to the page, where a field may need them', () => {
    for (const [id, keys] of [
      ['undo', 'CmdOrCtrl+Z'],
      ['redo', 'CmdOrCtrl+Shift+Z'],
    ] as const)
      expect(entry(id)).toMatchObject({ accelerator: keys, registerAccelerator: process.platform === 'darwin' });
    expect(entries().map((one) => one.role)).toEqual(expect.arrayContaining(['cut', 'copy', 'paste', 'selectAll']));
    expect(entries().map((one) => one.role)).not.toContain('undo');
  });
  test('goes to the nine places with the digits, in the order of the side bar', () => {
    const digits = entries().flatMap((one) => (/^CmdOrCtrl\+\d$/.test(one.accelerator ?? '') ? [one] : []));
    expect(digits.map((one) => [one.accelerator?.slice(-1), one.id])).toEqual([
      ['1', 'go-today'],
      ['2', 'go-batches'],
      ['3', 'go-hives'],
      ['4', 'go-boxes'],
      ['5', 'go-queens'],
      ['6', 'go-season'],
      ['7', 'go-print'],
      ['8', 'go-files'],
      ['9', 'go-class'],
    ]);
  });
});

describe('the menu and the dialogs speak the workbook’s language', () => {
  const tell = (path: string, input?: unknown) => call(own(), { kind: 'mutation', path, input });
  const heads = () => ((log.menus.at(-1)?.template ?? []) as readonly Entry[]).map((menu) => menu.label);
  const speak = (language: string) => tell('settings.saveSettings', { language });
  const begin = (name: string) => tell('workbook.beginWorkbook', { name, folder: null });
  const GERMAN = ['Datei', 'Bearbeiten', 'Gehe', 'Serie', 'Kästchen', 'Drucken', 'Ansicht', 'Hilfe'];
  const ENGLISH = ['File', 'Edit', 'Go', 'Batch', 'Boxes', 'Print', 'View', 'Help'];

  test('from the choice on, and no more often than it changes', async () => {
    await begin('German');
    const before = log.menus.length;
    expect(heads()).toEqual(ENGLISH);
    await speak('de');
    expect(heads()).toEqual(GERMAN);
    await tell('settings.saveSettings', { theme: 'dark' });
    expect(log.menus.length).toBe(before + 1);
    expect(entry('go-files').label).toBe('Dateien');
    expect(entry('go-files')).toMatchObject({ accelerator: 'CmdOrCtrl+8' });
    for (const { label, role } of entries().filter((one) => one.role !== undefined)) expect(label, role).toBeTruthy();
    expect(entries().find((one) => one.role === 'copy')?.label).toBe('Kopieren');
  });

  test('also when the choice is undone and done again', async () => {
    await tell('history.undo');
    await tell('history.undo');
    expect(heads()).toEqual(ENGLISH);
    await tell('history.redo');
    expect(heads()).toEqual(GERMAN);
  });

  test('when another workbook opens in the window, or is closed', async () => {
    await begin('English');
    expect(heads()).toEqual(ENGLISH);
    app.emit('open-file', { preventDefault() {} }, join(log.folder, 'documents/Ripecell/German.ripecell'));
    await vi.waitFor(() => expect(heads()).toEqual(GERMAN), { timeout: 30_000 });
    await tell('workbook.closeWorkbook');
    expect(heads()).toEqual(ENGLISH);
  });

  test('in what is said past the page', async () => {
    app.emit('open-file', { preventDefault() {} }, join(log.folder, 'documents/Ripecell/German.ripecell'));
    await vi.waitFor(() => expect(heads()).toEqual(GERMAN), { timeout: 30_000 });
    app.emit('open-file', { preventDefault() {} }, join(log.folder, 'gone.ripecell'));
    await vi.waitFor(() => expect(log.errors).toHaveLength(1), { timeout: 30_000 });
    expect(log.errors.pop()).toContain('ist nichts. Prüfen Sie den Namen');
    for (let crash = 0; crash < 5; crash += 1)
      window().webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 5 });
    expect(log.errors.pop()).toContain('mehrmals nacheinander gescheitert');
    log.errors.length = 0;
  });
});

describe('the page files', () => {
  const ask = async (url: string, method = 'GET') => {
    const serve = log.schemes.get('app');
    if (!serve) throw new Error('no app:// handler');
    return serve(new Request(url, { method }));
  };
  test('carry the policy that lets no foreign script in', async () => {
    const page = await ask('app://ripecell/');
    expect(page.status).toBe(200);
    const policy = page.headers.get('content-security-policy') ?? '';
    for (const rule of [
      "default-src 'none'",
      "script-src 'self'",
      "connect-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-ancestors 'none'",
      "require-trusted-types-for 'script'",
    ])
      expect(policy).toContain(rule);
    expect(policy).not.toContain('unsafe');
    expect(page.headers.get('x-content-type-options')).toBe('nosniff');
    const html = await page.text();
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)[^>]*>/);
    expect(html).not.toMatch(/https?:\/\//);
  });
  test('carry a word for styles that is another one in each answer, and stands in the page', async () => {
    const words = await Promise.all(
      [1, 2].map(async () => {
        const page = await ask('app://ripecell/');
        const [, word] = /'nonce-([\w-]{22})'/.exec(page.headers.get('content-security-policy') ?? '') ?? [];
        expect(await page.text()).toContain(`<meta property="csp-nonce" nonce="${word}">`);
        return word;
      }),
    );
    expect(new Set(words).size).toBe(2);
  });
  test.each([
    ['app://ripecell/../main/electron.js', 404],
    ['app://ripecell/%2e%2e/main/electron.js', 404],
    ['app://ripecell/..%2f..%2fpackage.json', 404],
    ['app://ripecell/%00', 404],
    ['app://ripecell/nothing.js', 404],
    ['app://elsewhere/index.html', 403],
  ])('%s answers %i', async (url, status) => {
    expect((await ask(url)).status).toBe(status);
  });
  test('are only read', async () => {
    expect((await ask('app://ripecell/', 'POST')).status).toBe(405);
  });
});

test('the preload requires nothing but electron and exposes one call', () => {
  const preload = readFileSync(join(OUT, 'preload/preload.cjs'), 'utf8');
  const required = [...preload.matchAll(/require\(["'`]([^"'`]+)["'`]\)/g)].map((match) => match[1]);
  expect(new Set(required)).toEqual(new Set(['electron']));
  const exposed: Record<string, unknown> = {};
  const invoked: unknown[] = [];
  const electron = {
    contextBridge: { exposeInMainWorld: (name: string, value: unknown) => Object.assign(exposed, { [name]: value }) },
    ipcRenderer: { invoke: (...given: unknown[]) => invoked.push(given) },
  };
  new Function('require', 'module', 'exports', preload)(() => electron, { exports: {} }, {});
  expect(Object.keys(exposed)).toEqual(['ripecell']);
  const bridge = exposed.ripecell as { call(request: unknown): void };
  expect(Object.keys(bridge).sort()).toEqual(['call', 'shell']);
  bridge.call(STATE);
  expect(invoked).toEqual([[CALL_CHANNEL, STATE]]);
});
