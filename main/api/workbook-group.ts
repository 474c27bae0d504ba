import { BeginWorkbook, OpenWorkbook, PackWorkbook, SaveElsewhere } from '../../shared/contract/workbook.ts';
import { beginWorkbook } from '../operations/workbook/begin-workbook.ts';
import { closeWorkbook } from '../operations/workbook/close-workbook.ts';
import { getWorkbookState } from '../operations/workbook/get-workbook-state.ts';
import { lookAtWorkbook } from '../operations/workbook/look-at-workbook.ts';
import { openDemo } from '../operations/workbook/open-demo.ts';
import { openPractice } from '../operations/workbook/open-practice.ts';
import { openWorkbook } from '../operations/workbook/open-workbook.ts';
import { packWorkbook } from '../operations/workbook/pack-workbook.ts';
import { resetPractice } from '../operations/workbook/reset-practice.ts';
import { saveElsewhere } from '../operations/workbook/save-elsewhere.ts';
import { group, lifecycleCommand, lifecycleQuery, plainLifecycleCommand } from './procedures.ts';

/** The operations that open, begin and close workbooks; they can be called while none is open. */
export const workbookGroup = group({
  getWorkbookState: lifecycleQuery(getWorkbookState),
  beginWorkbook: lifecycleCommand(BeginWorkbook, beginWorkbook),
  openWorkbook: lifecycleCommand(OpenWorkbook, openWorkbook),
  lookAtWorkbook: lifecycleCommand(OpenWorkbook, lookAtWorkbook),
  saveElsewhere: lifecycleCommand(SaveElsewhere, saveElsewhere),
  packWorkbook: lifecycleCommand(PackWorkbook, packWorkbook),
  openDemo: plainLifecycleCommand(openDemo),
  openPractice: plainLifecycleCommand(openPractice),
  resetPractice: plainLifecycleCommand(resetPractice),
  closeWorkbook: plainLifecycleCommand(closeWorkbook),
});
