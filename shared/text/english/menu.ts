/** Words of the native menu. The ampersand is written out: no access keys are marked in the words themselves. */
export const menuWords = {
  file: 'File',
  edit: 'Edit',
  go: 'Go',
  batch: 'Batch',
  boxes: 'Boxes',
  print: 'Print',
  view: 'View',
  help: 'Help',
  'new-workbook': 'New workbook…',
  'open-workbook': 'Open a workbook…',
  'open-demo': 'Look at the demo',
  'close-workbook': 'Close this workbook',
  'new-batch': 'Start a batch',
  'go-today': 'Today',
  'go-batches': 'Batches',
  'go-hives': 'Hives',
  'go-boxes': 'Mating boxes',
  'go-queens': 'Queens',
  'go-season': 'Season',
  'go-print': 'Print',
  'go-class': 'Class',
  'go-settings': 'Settings',
  'go-history': 'History',
  'go-to': 'Go to…',
  back: 'Back',
  forward: 'Forward',
  undo: 'Undo',
  redo: 'Redo',
  'type-looks': 'Type looks',
  'place-cells': 'Put cells in boxes',
  'report-slip': 'Say what was really seen',
  'print-labels': 'Labels',
  'print-view': 'Print this view…',
  /** The Help menu's own entry, kept apart because the menu itself has the same word. */
  helpEntry: 'Help and glossary',
  aboutEntry: 'About Ripecell',
} as const;

/** What the window itself says, past the page. */
export const windowWords = {
  title: 'Ripecell',
  pageKeepsFailing:
    'The page failed several times in a row. All that you saved is in the workbook. Close the program and start it again.',
} as const;
