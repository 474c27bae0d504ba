import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SaveSettings, Settings } from '../../../shared/contract/settings.ts';
import { ok, type Result } from '../../../shared/kernel/result.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';

/** Changes the named settings and leaves all others. */
export function saveSettings({ workbook }: Desk, changes: z.infer<typeof SaveSettings>): Result<Settings, Refusal> {
  return workbook.change('Settings', ({ settings }) => {
    for (const [key, value] of Object.entries(changes)) {
      if (value !== undefined) settings.put(key, value);
    }
    return ok(storedSettings(settings));
  });
}
