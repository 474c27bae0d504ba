import { join } from 'node:path';
import { app, BrowserWindow, dialog, screen, type WebContents } from 'electron';
import type { Words } from '../../shared/text/english/english.ts';
import { PAGE_ORIGIN } from './protocol.ts';
import { isOnAScreen, readWindowPlace, writeWindowPlace } from './window-place.ts';

const SMALLEST = { minWidth: 1024, minHeight: 640 };

export interface WindowSetting {
  readonly preload: string;
  /** Small file that remembers where the window stood. */
  readonly placeFile: string;
  /** Asked when they are needed: the workbook's language may have changed since. */
  readonly words: () => Words['window'];
}

/** Opens the one window of the program, locked down, where it stood last time. */
export function openWindow({ preload, placeFile, words }: WindowSetting): BrowserWindow {
  const last = readWindowPlace(placeFile);
  const place =
    last &&
    isOnAScreen(
      last,
      screen.getAllDisplays().map((display) => display.workArea),
    )
      ? last
      : null;
  const window = new BrowserWindow({
    ...SMALLEST,
    ...(place ? { x: place.x, y: place.y, width: place.width, height: place.height } : { width: 1366, height: 768 }),
    show: false,
    title: 'Ripecell',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
      // A developer may look inside; in the packaged program that would be a way to the workbook.
      devTools: !app.isPackaged,
    },
  });
  if (place?.maximised) window.maximize();
  lockDown(window.webContents);
  comeBackAfterCrash(window, words);
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    const { x, y, width, height } = window.getNormalBounds();
    writeWindowPlace(placeFile, { x, y, width, height, maximised: window.isMaximized() });
  });
  void window.loadURL(`${PAGE_ORIGIN}/`);
  return window;
}

/** The window shows the program's own page and nothing else. */
export function lockDown(contents: WebContents): void {
  const refuseElsewhere = (event: { preventDefault(): void }, url: string) => {
    if (!isOwnPage(url)) event.preventDefault();
  };
  contents.on('will-navigate', (event, url) => refuseElsewhere(event, url));
  contents.on('will-redirect', (event, url) => refuseElsewhere(event, url));
  contents.on('will-frame-navigate', (event) => refuseElsewhere(event, event.url));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** So many crashes of the page within a minute are one too many: loading it again would go on for ever. */
const CRASHES_MOST = 3;
const CRASHES_WITHIN = 60_000;

/** A page whose process ended is loaded anew; what was saved is in the workbook, and the core runs on. */
function comeBackAfterCrash(window: BrowserWindow, words: WindowSetting['words']): void {
  const crashes: number[] = [];
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit' || window.isDestroyed()) return;
    crashes.push(performance.now());
    const recent = crashes.filter((at) => performance.now() - at < CRASHES_WITHIN);
    if (recent.length > CRASHES_MOST) dialog.showErrorBox(words().title, words().pageKeepsFailing);
    else void window.loadURL(`${PAGE_ORIGIN}/`);
  });
}

export function isOwnPage(url: string): boolean {
  try {
    const parsed = new URL(url);
    return `${parsed.protocol}//${parsed.host}` === PAGE_ORIGIN && parsed.username === '' && parsed.password === '';
  } catch {
    return false;
  }
}

export const preloadFile = (outFolder: string): string => join(outFolder, 'preload', 'preload.cjs');
