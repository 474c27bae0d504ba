import type { Settings } from '../../../shared/contract/settings.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';

export function getSettings({ workbook }: Desk): Settings {
  return storedSettings(workbook.tables.settings);
}
