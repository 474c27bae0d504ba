import type { z } from 'zod';
import type { PrintSetup, SavePrinter } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { isoOfDay } from '../../../shared/kernel/day.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { departures, readingTrouble } from '../../../shared/model/printer.ts';
import type { Desk } from '../operation.ts';
import { keepPrinters, storedSetup } from './print-setup.ts';

/** Keeps what was measured on a printer's calibration page; measuring again replaces it. */
export function savePrinter(
  { workbook, today }: Desk,
  { name, ...readings }: z.infer<typeof SavePrinter>,
): Result<PrintSetup, Refusal> {
  const trouble = readingTrouble(readings);
  if (trouble) return refuse({ kind: 'printer-reading-wrong', ...trouble });
  return workbook.change({ did: 'save-settings' }, (tables) => {
    const others = storedSetup(tables).printers.filter((printer) => printer.name !== name);
    keepPrinters(tables, [...others, { name, measuredOn: isoOfDay(today), ...departures(readings) }]);
    return ok(storedSetup(tables));
  });
}
