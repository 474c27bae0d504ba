import type { ReadingTrouble } from '../../model/printer.ts';

/** "+0.4", "−0.2", "0.0": a departure in millimetres or per cent. */
const signed = (value: number, digits: number): string => {
  const text = Math.abs(value).toFixed(digits);
  if (Number(text) === 0) return text;
  return value < 0 ? `−${text}` : `+${text}`;
};

/** Words on the calibration page, and for measuring a printer. */
export const calibrationWords = {
  title: 'Calibration page',
  corrected: (printer: string) => `Calibration page, corrected for ${printer}`,
  howTo: [
    'Print this page at “Actual size” or “100 %”. Lay a ruler along it and read four lengths, to a tenth of a millimetre where you can:',
    '1. from the left edge of the paper to the upright stroke of the cross (drawn at 20 mm),',
    '2. from the upper edge of the paper to the lying stroke of the cross (drawn at 20 mm),',
    '3. the lying bar from the cross to its last stroke (drawn 100 mm long),',
    '4. the upright bar from the cross to its last stroke (drawn 100 mm long).',
    'Then hold this page with a sheet of labels against the light: the outlines show where the labels will print.',
  ],
  howToCheck: [
    'Where the printer was measured well, the cross stands 20 mm from both edges and both bars are 100 mm long.',
    'Hold this page with a sheet of labels against the light: the outlines should lie on the labels.',
  ],
  fileName: 'ripecell-calibration.pdf',
  section: 'Printers',
  explain:
    'Every printer shifts and stretches a little, and differently for each paper tray. Measure it once, and all label sheets allow for it.',
  printer: 'Printer',
  notMeasured: 'not measured',
  measured: (on: string) => `measured on ${on}`,
  shift: (right: number, down: number) => `${signed(right, 1)} mm to the right, ${signed(down, 1)} mm down`,
  stretch: (across: number, down: number) =>
    `${signed(100 * (across - 1), 2)} % across, ${signed(100 * (down - 1), 2)} % down`,
  page: 'Save the calibration page',
  check: 'Save the page to check it',
  remove: 'Forget this printer',
  add: 'Measure a printer',
  name: 'Name of the printer and tray',
  nameHint: 'Such as: kitchen, rear tray',
  fields: {
    crossFromLeft: 'Left edge to the cross, mm',
    crossFromTop: 'Upper edge to the cross, mm',
    barAcross: 'Lying bar, mm',
    barDown: 'Upright bar, mm',
  } satisfies Record<ReadingTrouble['field'], string>,
  save: 'Keep these readings',
  unclear: 'Type a length in millimetres, such as 20.4.',
} as const;

export const ownSheets = {
  section: 'Own label sheets',
  explain:
    'Measure a sheet that is not on the list with a ruler, in millimetres. Pitch is the way from the left edge of one label to the left edge of the next, and likewise downwards. Print an outline on plain paper first, and hold it against the sheet.',
  choose: 'Sheet',
  another: 'a new sheet',
  name: 'Name',
  fields: {
    paperWidth: 'Paper, width',
    paperHeight: 'Paper, height',
    columns: 'Labels across',
    rows: 'Labels down',
    labelWidth: 'Label, width',
    labelHeight: 'Label, height',
    left: 'Left edge to first label',
    top: 'Upper edge to first label',
    pitchX: 'Pitch across',
    pitchY: 'Pitch down',
  },
  unclear: 'Type a number of millimetres, such as 63.5.',
  save: 'Keep this sheet',
  remove: 'Remove this sheet',
  saved: 'Kept. It is on the list of sheets above.',
} as const;
