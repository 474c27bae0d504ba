import type { MenuItemConstructorOptions } from 'electron';
import { type Command, goToPlace, PLACES } from '../../shared/contract/shell.ts';
import type { Words } from '../../shared/text/english/english.ts';

type MenuWords = Words['menu'];
type Entry = MenuItemConstructorOptions;
type Choose = (command: Command) => void;

/** Accelerators of the window; the page knows the same keys for the browser shell. */
const ACCELERATORS: Partial<Record<Command, string>> = {
  'new-batch': 'CmdOrCtrl+N',
  'new-workbook': 'CmdOrCtrl+Shift+N',
  'open-workbook': 'CmdOrCtrl+O',
  ...Object.fromEntries(PLACES.map((place, index) => [goToPlace(place), `CmdOrCtrl+${index + 1}`])),
  'go-settings': 'CmdOrCtrl+,',
  'go-to': 'CmdOrCtrl+K',
  back: 'Alt+Left',
  forward: 'Alt+Right',
  'type-looks': 'CmdOrCtrl+E',
  'place-cells': 'CmdOrCtrl+B',
  'report-slip': 'CmdOrCtrl+R',
  'print-labels': 'CmdOrCtrl+L',
  undo: 'CmdOrCtrl+Z',
  redo: 'CmdOrCtrl+Shift+Z',
  'print-view': 'CmdOrCtrl+P',
  help: 'F1',
};

/** Keys that a text field may need for itself: the page hears them first, except on macOS, where the menu always does. */
const OWN_KEYS: readonly Command[] = ['undo', 'redo'];

/** Ways to another workbook. */
const WORKBOOKS: readonly Command[] = ['new-workbook', 'open-workbook', 'open-demo', 'open-practice'];

const separator: MenuItemConstructorOptions = { type: 'separator' };

/** The whole menu bar. The stock reload entry is left out: its key belongs to "say what was really seen". */
export function menuTemplate(choose: Choose, platform: NodeJS.Platform, menuWords: MenuWords): Entry[] {
  const entry = (command: Command): MenuItemConstructorOptions => {
    const accelerator = ACCELERATORS[command];
    return {
      id: command,
      label: command === 'help' ? menuWords.helpEntry : menuWords[command],
      click: () => choose(command),
      ...(accelerator ? { accelerator } : {}),
      ...(OWN_KEYS.includes(command) ? { registerAccelerator: platform === 'darwin' } : {}),
    };
  };
  const menu = (label: string, ...submenu: MenuItemConstructorOptions[]) => ({ label, submenu });
  return [
    ...(platform === 'darwin' ? [macMenu(menuWords)] : []),
    menu(
      menuWords.file,
      ...WORKBOOKS.map(entry),
      separator,
      entry('close-workbook'),
      entry('go-settings'),
      ...(platform === 'darwin' ? [] : [separator, { role: 'quit', label: menuWords.quit } as const]),
    ),
    menu(
      menuWords.edit,
      entry('undo'),
      entry('redo'),
      separator,
      ...clipboardEntries(menuWords),
      separator,
      entry('go-history'),
    ),
    menu(
      menuWords.go,
      entry('go-to'),
      entry('back'),
      entry('forward'),
      separator,
      ...PLACES.map((place) => entry(goToPlace(place))),
    ),
    menu(menuWords.batch, entry('new-batch'), entry('report-slip')),
    menu(menuWords.boxes, entry('type-looks'), entry('place-cells')),
    menu(menuWords.print, entry('print-labels'), entry('print-view')),
    menu(menuWords.view, ...viewEntries(menuWords)),
    menu(menuWords.help, entry('help'), ...(platform === 'darwin' ? [] : [separator, aboutEntry(menuWords)])),
  ];
}

const aboutEntry = (menuWords: MenuWords): Entry => ({ role: 'about', label: menuWords.aboutEntry });

const clipboardEntries = (menuWords: MenuWords): readonly Entry[] => [
  { role: 'cut', label: menuWords.cut },
  { role: 'copy', label: menuWords.copy },
  { role: 'paste', label: menuWords.paste },
  { role: 'selectAll', label: menuWords.selectAll },
];

const viewEntries = (menuWords: MenuWords): readonly Entry[] => [
  { role: 'resetZoom', label: menuWords.resetZoom },
  { role: 'zoomIn', label: menuWords.zoomIn },
  { role: 'zoomOut', label: menuWords.zoomOut },
  separator,
  { role: 'togglefullscreen', label: menuWords.fullScreen },
];

/** The menu that macOS puts under the program's name. */
const macMenu = (menuWords: MenuWords): Entry => ({
  label: 'Ripecell',
  submenu: [
    aboutEntry(menuWords),
    separator,
    { role: 'services', label: menuWords.services },
    separator,
    { role: 'hide', label: menuWords.hide },
    { role: 'hideOthers', label: menuWords.hideOthers },
    { role: 'unhide', label: menuWords.unhide },
    separator,
    { role: 'quit', label: menuWords.quit },
  ],
});
