import type { z } from 'zod';
import type { PrintSetup, RemovePrinter } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { keepPrinters, storedSetup } from './print-setup.ts';

/** Forgets what was measured on a printer. */
export function removePrinter(
  { workbook }: Desk,
  { name }: z.infer<typeof RemovePrinter>,
): Result<PrintSetup, Refusal> {
  return workbook.change({ did: 'save-settings' }, (tables) => {
    keepPrinters(
      tables,
      storedSetup(tables).printers.filter((printer) => printer.name !== name),
    );
    return ok(storedSetup(tables));
  });
}
