import { SaveSettings } from '../../shared/contract/settings.ts';
import { BeginWorkbook, OpenWorkbook } from '../../shared/contract/workbook.ts';
import { getSettings } from '../operations/settings/get-settings.ts';
import { saveSettings } from '../operations/settings/save-settings.ts';
import { beginWorkbook } from '../operations/workbook/begin-workbook.ts';
import { closeWorkbook } from '../operations/workbook/close-workbook.ts';
import { getWorkbookState } from '../operations/workbook/get-workbook-state.ts';
import { openDemo } from '../operations/workbook/open-demo.ts';
import { openWorkbook } from '../operations/workbook/open-workbook.ts';
import { command, group, lifecycleCommand, lifecycleQuery, plainLifecycleCommand, plainQuery } from './procedures.ts';

/** Every operation of the program: its name, what goes in, and the function that answers. */
export const appRouter = group({
  workbook: group({
    getWorkbookState: lifecycleQuery(getWorkbookState),
    beginWorkbook: lifecycleCommand(BeginWorkbook, beginWorkbook),
    openWorkbook: lifecycleCommand(OpenWorkbook, openWorkbook),
    openDemo: plainLifecycleCommand(openDemo),
    closeWorkbook: plainLifecycleCommand(closeWorkbook),
  }),
  settings: group({
    getSettings: plainQuery(getSettings),
    saveSettings: command(SaveSettings, saveSettings),
  }),
});

export type AppRouter = typeof appRouter;
