// The desktop program: opens the core, one locked-down window, and carries the page's calls. It decides nothing.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { app, BrowserWindow, dialog, session } from 'electron';
import { type Core, createCore } from '../../main/api/core.ts';
import { languageOfLocale } from '../../shared/kernel/language.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import { checkInThread } from '../adapters/checking-thread.ts';
import { computerClock } from '../adapters/clock.ts';
import { randomIds } from '../adapters/ids.ts';
import { readPageFiles } from '../adapters/page-files.ts';
import { type Places, placesOf } from '../adapters/places.ts';
import { startReckoningThread } from '../adapters/reckoning-thread.ts';
import { reportToConsole } from '../adapters/report.ts';
import { answerCalls } from './calls.ts';
import { CommandLine } from './command-line.ts';
import { debugSwitchIn } from './debug-switches.ts';
import { dataFolderIn, openWorkbookFile, workbookIn } from './files-asked.ts';
import { keepMenu } from './keep-menu.ts';
import { registerPageScheme, servePage } from './protocol.ts';
import { denyEverything } from './session.ts';
import { openWindow, preloadFile } from './window.ts';

const OUT = join(import.meta.dirname, '..');

// A folder given for a trial holds everything, and has a lock of its own: it never meets the person's real workbook.
const trialFolder = dataFolderIn(process.argv);
const trial = trialFolder === null ? null : placesOf(trialFolder);
if (trial) app.setPath('userData', trial.programData);

// A developer may look inside; in the packaged program nobody may, since that would be a way to the workbook.
if (app.isPackaged && debugSwitchIn(process.argv) !== null) app.exit(1);
else if (!app.requestSingleInstanceLock()) app.quit();
else start();

function start(): void {
  app.enableSandbox();
  registerPageScheme();
  let core: Core | null = null;
  let onChange = () => {};
  let waiting = workbookIn(process.argv);
  const openAsked = (file: string | null) => {
    if (core && file) void openWorkbookFile(core, file).then(onChange);
    else waiting = file ?? waiting;
    const window = BrowserWindow.getAllWindows()[0];
    if (window?.isMinimized()) window.restore();
    window?.focus();
  };
  app.on('second-instance', (_event, argv, workingFolder) => openAsked(workbookIn(argv, workingFolder)));
  app.on('open-file', (event, file) => {
    event.preventDefault();
    openAsked(file);
  });
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', () => void core?.close());

  void app.whenReady().then(async () => {
    try {
      const places = trial ?? usualPlaces();
      core = createCore({
        clock: computerClock,
        ids: randomIds,
        reckon: startReckoningThread(join(OUT, 'main/reckoning-worker.js')).reckon,
        checkFile: checkInThread(join(OUT, 'main/checking-worker.js')),
        computerLanguage: languageOfLocale(app.getLocale()),
        places: { ...places, migrations: join(OUT, 'migrations') },
        report: reportToConsole,
      });
      if (waiting) await openWorkbookFile(core, waiting);
      onChange = showWindow(core, places);
    } catch (error) {
      const { couldNotStart } = wordsOf(languageOfLocale(app.getLocale())).window;
      dialog.showErrorBox(couldNotStart, error instanceof Error ? error.message : String(error));
      app.exit(1);
    }
  });
}

/** Answers what is to be called when the workbook may have changed: menu and dialogs speak its language. */
function showWindow(core: Core, { programData }: Places): () => void {
  const commands = new CommandLine();
  denyEverything(session.defaultSession);
  servePage(readPageFiles(join(OUT, 'renderer')));
  const onChange = keepMenu(core, commands);
  answerCalls({ core, commands, onChange });
  openWindow({
    preload: preloadFile(OUT),
    placeFile: join(programData, 'window.json'),
    words: () => wordsOf(core.language()).window,
  });
  return onChange;
}

function usualPlaces(): Places {
  const places = { documents: join(app.getPath('documents'), 'Ripecell'), programData: app.getPath('userData') };
  mkdirSync(places.documents, { recursive: true });
  return places;
}
