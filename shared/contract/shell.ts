/**
 * What only a shell can do, asked over the same one `call` under paths that begin with `shell.`. The browser shell
 * answers `{ available: false }` to all of them and the page falls back to what a browser offers.
 */
export type ShellAnswer<Value> = { readonly available: false } | ({ readonly available: true } & Value);

export type PickedFile = ShellAnswer<{ readonly path: string | null }>;

/** `path` is null when the person left the dialog; `failed` when the place could not be written. */
export type SavedFile = ShellAnswer<{ readonly path: string | null; readonly failed: boolean }>;

/** The places of the side bar, in its order: Ctrl+1 opens the first of them. */
export const PLACES = ['today', 'batches', 'hives', 'boxes', 'queens', 'season', 'print', 'files', 'class'] as const;
export type PlaceName = (typeof PLACES)[number];

export const goToPlace = (place: PlaceName): Command => `go-${place}`;

/** Commands of the native menu and of the keyboard; one list for both shells. */
export const COMMANDS = [
  'new-batch',
  'new-workbook',
  'open-workbook',
  'open-demo',
  'open-practice',
  'close-workbook',
  'go-today',
  'go-batches',
  'go-hives',
  'go-boxes',
  'go-queens',
  'go-season',
  'go-print',
  'go-files',
  'go-class',
  'go-settings',
  'go-history',
  'go-to',
  'back',
  'forward',
  'undo',
  'redo',
  'type-looks',
  'place-cells',
  'report-slip',
  'print-labels',
  'print-view',
  'help',
] as const;
export type Command = (typeof COMMANDS)[number];

/** The answer to `shell.nextCommand`: it waits until a menu entry is chosen. */
export type NextCommand = ShellAnswer<{ readonly command: Command }>;
