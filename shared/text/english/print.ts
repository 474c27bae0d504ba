import type { SheetKey } from '../../contract/print.ts';

export const print = {
  title: 'Print',
  labels: 'Labels for mating boxes',
  what: 'For',
  batch: (code: string, n: number) => `${code}, ${n === 1 ? '1 box' : `${n} boxes`}`,
  unprinted: (n: number) => (n === 0 ? 'all printed' : `${n} not printed yet`),
  sheet: 'Sheet',
  sheets: {
    'a4-3x7-63.5x38.1': 'A4, 3 × 7 labels of 63.5 × 38.1 mm',
    'roll-62': 'Roll, 62 mm wide',
  } as Partial<Record<SheetKey, string>>,
  startAt: 'First free label',
  startHint: 'Click the first free label, or type its number.',
  shows: 'The label shows',
  qr: 'Square code',
  pencilLine: 'Line for the pencil',
  outline: 'Outline, for plain paper',
  preview: 'How a label will look',
  save: 'Save as PDF',
  open: 'Open to print',
  advice:
    'In the print window choose “Actual size” or “100 %”, not “Fit to page”: the labels are drawn in exact millimetres.',
  ready: (labels: number, pages: number) =>
    `${labels === 1 ? '1 label' : `${labels} labels`} on ${pages === 1 ? '1 page' : `${pages} pages`}.`,
  saved: (path: string) => `Saved as ${path}.`,
  notSaved: 'The file could not be written there. Choose another folder.',
  downloaded: 'The PDF is in your downloads.',
  empty: 'No labels waiting. Labels appear when cells are put in boxes.',
  used: 'used',
  free: 'free',
  willPrint: 'will be printed',
  labelN: (n: number, what: string) => `Label ${n}, ${what}`,
} as const;
