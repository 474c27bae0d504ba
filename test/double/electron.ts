// A double of the parts of Electron that app/electron uses. It records what the program sets up and lets a test fire
// events; it decides nothing. Unknown uses throw, so that the double cannot hide a call it does not know.
import { EventEmitter } from 'node:events';

type AnyFunction = (...given: never[]) => unknown;

export const log = {
  windows: [] as BrowserWindow[],
  handlers: new Map<string, AnyFunction>(),
  schemes: new Map<string, (request: Request) => Promise<Response>>(),
  privileged: [] as unknown[],
  permission: {} as Record<string, AnyFunction>,
  beforeRequest: null as AnyFunction | null,
  sessionEvents: new Map<string, AnyFunction>(),
  menus: [] as { template: unknown[] }[],
  opened: [] as string[],
  dialogs: [] as { kind: string; options: unknown }[],
  answers: { open: [] as string[], save: '' },
  errors: [] as string[],
  order: [] as string[],
  quits: 0,
  packaged: false,
  exits: [] as number[],
  folder: '',
  paths: {} as Record<string, string>,
  firstInstance: true,
};

class App extends EventEmitter {
  get isPackaged() {
    return log.packaged;
  }
  requestSingleInstanceLock() {
    log.order.push('requestSingleInstanceLock');
    return log.firstInstance;
  }
  enableSandbox() {
    log.order.push('enableSandbox');
  }
  whenReady() {
    log.order.push('whenReady');
    return Promise.resolve();
  }
  getLocale() {
    return 'en-GB';
  }
  getPath(name: string) {
    if (name !== 'userData' && name !== 'documents') throw new Error(`double: no path ${name}`);
    return log.paths[name] ?? `${log.folder}/${name}`;
  }
  setPath(name: string, folder: string) {
    log.order.push('setPath');
    log.paths[name] = folder;
  }
  quit() {
    log.quits += 1;
    this.emit('will-quit', { preventDefault() {} });
  }
  exit(code = 0) {
    log.exits.push(code);
    log.quits += 1;
  }
}
export const app = new App();

class WebContents extends EventEmitter {
  openHandler?: (details: { url: string }) => { action: string };
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }) {
    this.openHandler = handler;
  }
  /** True when the program refused what the event asks for. */
  refuses(event: string, url: string) {
    let refused = false;
    const details = {
      url,
      preventDefault() {
        refused = true;
      },
    };
    this.emit(event, details, url);
    return refused;
  }
}

export class BrowserWindow extends EventEmitter {
  webContents = new WebContents();
  url = '';
  shown = false;
  options: { webPreferences?: Record<string, unknown> } & Record<string, unknown>;
  constructor(options: BrowserWindow['options']) {
    super();
    this.options = options;
    log.windows.push(this);
  }
  static getAllWindows() {
    return log.windows;
  }
  static fromWebContents(contents: unknown) {
    return log.windows.find((window) => window.webContents === contents) ?? null;
  }
  isDestroyed() {
    return false;
  }
  loadURL(url: string) {
    log.order.push('loadURL');
    this.url = url;
    return Promise.resolve();
  }
  show() {
    this.shown = true;
  }
  focus() {
    log.order.push('focus');
  }
  isMinimized() {
    return false;
  }
  isMaximized() {
    return false;
  }
  maximize() {
    log.order.push('maximize');
  }
  getNormalBounds() {
    return { x: 10, y: 20, width: 1200, height: 700 };
  }
}

export const ipcMain = {
  handle(channel: string, handler: AnyFunction) {
    if (log.handlers.has(channel)) throw new Error(`second handler for ${channel}`);
    log.handlers.set(channel, handler);
  },
};

export const protocol = {
  registerSchemesAsPrivileged(schemes: unknown[]) {
    log.order.push('registerSchemes');
    log.privileged.push(...schemes);
  },
  handle(scheme: string, handler: (request: Request) => Promise<Response>) {
    log.schemes.set(scheme, handler);
  },
};

export const session = {
  defaultSession: {
    on(event: string, handler: AnyFunction) {
      log.sessionEvents.set(event, handler);
    },
    setPermissionRequestHandler(handler: AnyFunction) {
      log.permission.request = handler;
    },
    setPermissionCheckHandler(handler: AnyFunction) {
      log.permission.check = handler;
    },
    setDevicePermissionHandler(handler: AnyFunction) {
      log.permission.device = handler;
    },
    webRequest: {
      onBeforeRequest(handler: AnyFunction) {
        log.beforeRequest = handler;
      },
    },
  },
};

export const screen = { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1366, height: 728 } }] };

export const Menu = {
  buildFromTemplate: (template: unknown[]) => ({ template }),
  setApplicationMenu(menu: { template: unknown[] }) {
    log.menus.push(menu);
  },
};

export const shell = {
  showItemInFolder(path: string) {
    log.opened.push(path);
  },
};

export const dialog = {
  showErrorBox(title: string, content: string) {
    log.errors.push(`${title}: ${content}`);
  },
  showOpenDialog(_window: unknown, options: unknown) {
    log.dialogs.push({ kind: 'open', options });
    return Promise.resolve({ canceled: log.answers.open.length === 0, filePaths: log.answers.open });
  },
  showSaveDialog(_window: unknown, options: unknown) {
    log.dialogs.push({ kind: 'save', options });
    return Promise.resolve({ canceled: log.answers.save === '', filePath: log.answers.save });
  },
};
