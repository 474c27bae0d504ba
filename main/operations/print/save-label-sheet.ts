import type { PrintSetup } from '../../../shared/contract/print.ts';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { type OwnLabelSheet, sheetTrouble } from '../../../shared/model/own-label-sheet.ts';
import type { Desk } from '../operation.ts';
import { keepSheets, storedSetup } from './print-setup.ts';

/** Keeps a label sheet of the person's own measures, new or changed, when such a sheet can be. */
export function saveLabelSheet({ workbook }: Desk, sheet: OwnLabelSheet): Result<PrintSetup, Refusal> {
  const trouble = sheetTrouble(sheet);
  if (trouble) return refuse({ kind: 'label-sheet-wrong', ...trouble });
  return workbook.change({ did: 'save-settings' }, (tables) => {
    const others = storedSetup(tables).sheets.filter(({ key }) => key !== sheet.key);
    keepSheets(tables, [...others, sheet]);
    return ok(storedSetup(tables));
  });
}
