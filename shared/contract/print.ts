import { z } from 'zod';
import type { IsoDay } from '../kernel/day.ts';
import type { Language } from '../kernel/language.ts';
import { IdField, IsoDayField } from '../model/fields.ts';
import { OwnLabelSheet, type SheetTrouble } from '../model/own-label-sheet.ts';
import { Printer, PrinterReadings, type ReadingTrouble } from '../model/printer.ts';
import { BatchPreview } from './batches.ts';

/** Which label sheet: one of the list, or one of the person's own. */
const SheetField = z.string().min(1).max(80);
/** A measured printer by its name; null = not measured. */
const PrinterField = Printer.shape.name.nullable();

/** What the person measured: label sheets of their own, and printers. */
export interface PrintSetup {
  readonly sheets: readonly OwnLabelSheet[];
  readonly printers: readonly Printer[];
}
export const SaveLabelSheet = OwnLabelSheet;
export const RemoveLabelSheet = OwnLabelSheet.pick({ key: true });
export const SavePrinter = PrinterReadings.extend({ name: Printer.shape.name });
export const RemovePrinter = Printer.pick({ name: true });
export const PrintCalibration = z.object({ sheet: SheetField, printer: PrinterField, large: z.boolean().optional() });

export const OfferLabels = z.object({ batchId: IdField.nullable(), sheet: SheetField });

export const LabelChoice = z.object({
  batchId: IdField.nullable(),
  boxIds: z.array(IdField).max(400).nullable(),
  sheet: SheetField,
  /** First free label, from 1. */
  startAt: z.int().min(1).max(500),
  printer: PrinterField.default(null),
  qr: z.boolean(),
  pencilLine: z.boolean(),
  outline: z.boolean(),
});
export type LabelChoice = z.input<typeof LabelChoice>;

export interface LabelText {
  readonly language: Language;
  readonly placementId: string;
  readonly box: string;
  readonly batch: string;
  readonly mother: string;
  readonly yearColour: string;
  readonly handsOffUntil: string;
  readonly firstLookOn: string;
  readonly sealedBroodLookOn: string;
}

/** What stands on a label, whatever it is stuck on. */
export interface LabelFace extends Omit<LabelText, 'placementId' | 'handsOffUntil'> {
  /** Null = no hands-off strip. */
  readonly handsOffUntil: string | null;
  /** The two lowest lines stand as they are; an empty one is left out. */
  readonly linesAsTheyAre?: boolean;
}

export const PreviewLabel = LabelChoice.pick({ sheet: true, qr: true, pencilLine: true }).extend({ batchId: IdField });

/** The first label of a batch as it will be printed: millimetres from its upper left corner, sizes in points. */
export interface LabelPicture {
  readonly texts: readonly {
    readonly text: string;
    readonly bold: boolean;
    readonly points: number;
    readonly x: number;
    /** Baseline. */
    readonly y: number;
    readonly width: number;
  }[];
  /** The hands-off frame, hatched but from `clearFrom` to `clearTo`. */
  readonly strip: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly clearFrom: number;
    readonly clearTo: number;
  } | null;
  readonly pencilLine: { readonly x: number; readonly y: number; readonly width: number } | null;
  /** One text a row, one sign a module, 1 = dark. */
  readonly qr: {
    readonly x: number;
    readonly y: number;
    readonly module: number;
    readonly rows: readonly string[];
  } | null;
  /** What this label is too small for. */
  readonly omitted: readonly OmittedPart[];
}

export type OmittedPart = 'brood' | 'mother' | 'look' | 'colour' | 'pencilLine';

export interface LabelOffer {
  /** Batches with cells in boxes, newest first, and how many of their labels are not printed yet. */
  readonly batches: readonly {
    readonly id: string;
    readonly code: string;
    readonly boxes: number;
    readonly unprinted: number;
  }[];
  readonly labels: readonly LabelText[];
  /** Of these labels, those never printed, or printed with words that are no longer right. */
  readonly waiting: readonly WaitingLabel[];
  readonly startAt: number;
}

/** The parts of a label that may change after it was printed. */
export type LabelPart = Exclude<keyof LabelText, 'placementId' | 'language'>;

export interface WaitingLabel {
  readonly boxId: string;
  readonly box: string;
  /** Null = never printed. */
  readonly printedOn: IsoDay | null;
  readonly changes: readonly { readonly part: LabelPart; readonly was: string; readonly now: string }[];
}

export const PrintYardSheet = z.object({
  /** Null = the boxes of all yards. */
  yardId: IdField.nullable(),
  /** The day of the walk; null = today. */
  walkOn: IsoDayField.nullable(),
  paper: z.enum(['a4', 'letter']),
  large: z.boolean(),
  /** The week ahead on a page of its own. */
  week: z.boolean().optional(),
  /** What its lines are: hives with a job and mating boxes, as for a walk; every hive, as looks at hives are typed; blank. */
  lines: z.enum(['walk', 'hives', 'blank']).optional(),
  /** Side by side. Large print has one, whatever is asked. */
  columns: z.union([z.literal(1), z.literal(2)]).optional(),
  /** Squares for notes on the back of each page of lines. */
  squaredBack: z.boolean().optional(),
  /** Made to be looked at only, so nothing is kept of it. */
  look: z.boolean().optional(),
});
export type YardSheetLines = NonNullable<z.infer<typeof PrintYardSheet>['lines']>;

/** A printed yard sheet that no longer says what is right. */
export interface StaleSheet {
  readonly walkOn: IsoDay;
  /** Null = all yards. */
  readonly yard: string | null;
  readonly lines: YardSheetLines;
  readonly printedOn: IsoDay;
  /** Hives and boxes whose line would differ. */
  readonly changed: readonly string[];
  /** Other hives or boxes must be left alone, or other days. */
  readonly leaveAlone: boolean;
}

/** A timetable for the class: nothing of it comes from the workbook. */
export const PrintTimetable = BatchPreview.pick({
  method: true,
  comb: true,
  builderType: true,
  anchorStep: true,
  anchorOn: true,
}).extend({
  variant: z.enum(['dates', 'day-numbers', 'gaps']),
  paper: z.enum(['a4', 'letter']),
  large: z.boolean().default(false),
});

export interface PaperFile {
  readonly name: string;
  readonly mediaType: 'application/pdf';
  readonly base64: string;
  readonly pages: number;
}

export interface PrintedFile extends PaperFile {
  readonly nextStartAt: number;
}

export type PrintRefusal =
  | { readonly kind: 'nothing-to-label'; readonly field: 'kind' }
  | { readonly kind: 'label-sheet-missing'; readonly field: 'sheet' }
  | (SheetTrouble & { readonly kind: 'label-sheet-wrong' })
  | (ReadingTrouble & { readonly kind: 'printer-reading-wrong' })
  | { readonly kind: 'no-labels'; readonly field: 'batchId' }
  | { readonly kind: 'start-beyond-sheet'; readonly field: 'startAt'; readonly labels: number }
  | { readonly kind: 'qr-does-not-fit'; readonly field: 'qr'; readonly neededMillimetres: number };
