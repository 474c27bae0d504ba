import type { z } from 'zod';
import type { PrintSetup, RemoveLabelSheet } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { keepSheets, storedSetup } from './print-setup.ts';

/** Takes one of the person's own label sheets off the list. */
export function removeLabelSheet(
  { workbook }: Desk,
  { key }: z.infer<typeof RemoveLabelSheet>,
): Result<PrintSetup, Refusal> {
  return workbook.change({ did: 'save-settings' }, (tables) => {
    keepSheets(
      tables,
      storedSetup(tables).sheets.filter((sheet) => sheet.key !== key),
    );
    return ok(storedSetup(tables));
  });
}
