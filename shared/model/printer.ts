import { z } from 'zod';
import { IsoDayField, NameField } from './fields.ts';

/** How a printer, with one way of feeding paper, departs from what it is told: a shift in millimetres and a stretch as a factor. */
export const Printer = z.object({
  /** In the person's words, "kitchen, rear tray". */
  name: NameField,
  measuredOn: IsoDayField,
  shiftX: z.number().min(-30).max(30),
  shiftY: z.number().min(-30).max(30),
  stretchX: z.number().min(0.9).max(1.1),
  stretchY: z.number().min(0.9).max(1.1),
});
export type Printer = z.infer<typeof Printer>;

/** What is read off the calibration page with a ruler, in millimetres. */
export const PrinterReadings = z.object({
  /** From the left edge of the paper to the upright stroke of the cross. */
  crossFromLeft: z.number().min(0).max(400),
  /** From the upper edge to the lying stroke. */
  crossFromTop: z.number().min(0).max(400),
  barAcross: z.number().min(0).max(400),
  barDown: z.number().min(0).max(400),
});
export type PrinterReadings = z.infer<typeof PrinterReadings>;

/** Where the cross stands on the page and how long the bars are drawn, in millimetres. */
export const CROSS = 20;
export const BAR = 100;

/** Departures of a printer from the readings: printed place = shift + stretch x place asked for. */
export function departures({
  crossFromLeft,
  crossFromTop,
  barAcross,
  barDown,
}: PrinterReadings): Pick<Printer, 'shiftX' | 'shiftY' | 'stretchX' | 'stretchY'> {
  const [stretchX, stretchY] = [barAcross / BAR, barDown / BAR];
  return { stretchX, stretchY, shiftX: crossFromLeft - stretchX * CROSS, shiftY: crossFromTop - stretchY * CROSS };
}

/** No printer departs by more than this when it prints at its true size (common practice, no source). */
const MOST_STRETCH = 2;
const MOST_SHIFT = 15;

export interface ReadingTrouble {
  readonly field: keyof PrinterReadings;
  readonly trouble: 'scaled' | 'far';
  readonly millimetres: number;
}

/** The first reading that cannot come from a print at true size, or null. */
export function readingTrouble(readings: PrinterReadings): ReadingTrouble | null {
  for (const field of ['barAcross', 'barDown'] as const)
    if (Math.abs(readings[field] - BAR) > MOST_STRETCH)
      return { field, trouble: 'scaled', millimetres: readings[field] };
  for (const field of ['crossFromLeft', 'crossFromTop'] as const)
    if (Math.abs(readings[field] - CROSS) > MOST_SHIFT) return { field, trouble: 'far', millimetres: readings[field] };
  return null;
}
