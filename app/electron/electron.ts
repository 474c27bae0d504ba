// The desktop program: opens the core, one locked-down window, and carries the page's calls. It decides nothing.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { app, BrowserWindow, dialog, Menu, session } from 'electron';
import { type Core, createCore } from '../../main/api/core.ts';
import { computerClock } from '../adapters/clock.ts';
import { randomIds } from '../adapters/ids.ts';
import { readPageFiles } from '../adapters/page-files.ts';
import { reportToConsole } from '../adapters/report.ts';
import { answerCalls } from './calls.ts';
import { CommandLine } from './command-line.ts';
import { menuTemplate } from './menu.ts';
import { registerPageScheme, servePage } from './protocol.ts';
import { denyEverything } from './session.ts';
import { openWindow, preloadFile } from './window.ts';

const OUT = join(import.meta.dirname, '..');
const WORKBOOK_ENDING = '.ripecell';

if (!app.requestSingleInstanceLock()) app.quit();
else start();

function start(): void {
  app.enableSandbox();
  registerPageScheme();
  const commands = new CommandLine();
  let core: Core | null = null;
  let asked = workbookIn(process.argv);
  const openAsked = (file: string) => {
    asked = file;
    void core?.openFile(file);
    const window = BrowserWindow.getAllWindows()[0];
    if (window?.isMinimized()) window.restore();
    window?.focus();
  };
  app.on('second-instance', (_event, argv) => openAsked(workbookIn(argv) ?? ''));
  app.on('open-file', (event, file) => {
    event.preventDefault();
    openAsked(file);
  });
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', () => void core?.close());

  void app.whenReady().then(async () => {
    try {
      const programData = app.getPath('userData');
      const documents = join(app.getPath('documents'), 'Ripecell');
      mkdirSync(documents, { recursive: true });
      core = createCore({
        clock: computerClock,
        ids: randomIds,
        places: { documents, programData, migrations: join(OUT, 'migrations') },
        report: reportToConsole,
      });
      if (asked) await core.openFile(asked);
      denyEverything(session.defaultSession);
      servePage(readPageFiles(join(OUT, 'renderer')));
      answerCalls(core, commands);
      Menu.setApplicationMenu(
        Menu.buildFromTemplate(menuTemplate((command) => commands.choose(command), process.platform)),
      );
      openWindow({ preload: preloadFile(OUT), placeFile: join(programData, 'window.json') });
    } catch (error) {
      dialog.showErrorBox('Ripecell could not start', error instanceof Error ? error.message : String(error));
      app.exit(1);
    }
  });
}

/** A workbook named on the command line by a double click; anything else there is left alone. */
function workbookIn(argv: readonly string[]): string | null {
  return argv.slice(1).find((word) => word.endsWith(WORKBOOK_ENDING) && !word.startsWith('-')) ?? null;
}
