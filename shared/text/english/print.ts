import type { LabelPart, OmittedPart } from '../../contract/print.ts';
import { type LabelSheet, labelsOnSheet } from '../../model/label-sheet.ts';

const PARTS: Readonly<Record<OmittedPart, string>> = {
  brood: 'look for sealed brood',
  mother: 'mother',
  look: 'first look',
  colour: 'year colour',
  pencilLine: 'line for the pencil',
};

export const print = {
  title: 'Print',
  labels: 'Labels for mating boxes',
  what: 'For',
  batch: (code: string, n: number) => `${code}, ${n === 1 ? '1 box' : `${n} boxes`}`,
  unprinted: (n: number) => (n === 0 ? 'all printed' : `${n} not printed yet`),
  which: 'Which labels',
  allLabels: (n: number) => (n === 1 ? 'the 1 label' : `all ${n} labels`),
  waitingLabels: (n: number) =>
    n === 1 ? 'only the 1 that is new or changed' : `only the ${n} that are new or changed`,
  changed: (n: number) =>
    n === 1 ? '1 label is out of date since it was printed:' : `${n} labels are out of date since they were printed:`,
  parts: {
    box: 'box',
    batch: 'batch',
    mother: 'mother',
    yearColour: 'year colour',
    handsOffUntil: 'hands off until',
    firstLookOn: 'first look',
    sealedBroodLookOn: 'sealed brood',
  } satisfies Record<LabelPart, string>,
  changedPart: (part: string, was: string, now: string) => `${part} ${was} → ${now}`,
  changedLine: (boxes: string, changes: string) => `${boxes}: ${changes}`,
  sheet: 'Sheet',
  sheetName,
  startAt: 'First free label',
  startHint: 'Click the first free label, or type its number.',
  shows: 'The label shows',
  qr: 'Square code',
  pencilLine: 'Line for the pencil',
  outline: 'Outline, for plain paper',
  preview: 'How a label will look',
  tooSmallFor: (parts: readonly OmittedPart[]) =>
    `This label is too small for: ${parts.map((part) => PARTS[part]).join(', ')}.`,
  save: 'Save as PDF',
  open: 'Open to print',
  advice:
    'In the print window choose “Actual size” or “100 %”, not “Fit to page”: the labels are drawn in exact millimetres.',
  ready: (labels: number, pages: number) =>
    `${labels === 1 ? '1 label' : `${labels} labels`} on ${pages === 1 ? '1 page' : `${pages} pages`}.`,
  pages: (pages: number) => (pages === 1 ? '1 page.' : `${pages} pages.`),
  saved: (path: string) => `Saved as ${path}.`,
  notSaved: 'The file could not be written there. Choose another folder.',
  downloaded: 'The PDF is in your downloads.',
  empty: 'No labels waiting. Labels appear when cells are put in boxes.',
  used: 'used',
  free: 'free',
  willPrint: 'will be printed',
  labelN: (n: number, what: string) => `Label ${n}, ${what}`,
} as const;

/** A sheet or roll by its measures, since makers' names and numbers say nothing about the yard. */
function sheetName(sheet: LabelSheet & { readonly name?: string }): string {
  if (sheet.name !== undefined) return `${sheet.name}, ${sheet.columns} × ${sheet.rows}`;
  const { columns, rows, labelWidth, labelHeight, paperWidth } = sheet;
  const millimetres = (side: number): string => String(Math.round(side * 10) / 10);
  const label = `${millimetres(labelWidth)} × ${millimetres(labelHeight)} mm`;
  if (sheet.key === 'roll-62') return 'Roll, 62 mm wide, cut at 40 mm';
  if (labelsOnSheet(sheet) === 1) return `Roll, labels of ${label}`;
  return `${paperWidth === 210 ? 'A4' : 'Letter'}, ${columns} × ${rows} labels of ${label}`;
}
