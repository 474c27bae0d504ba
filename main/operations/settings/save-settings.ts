import type { z } from 'zod';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import type { SaveSettings, Settings } from '../../../shared/contract/settings.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import { keyUsedTwice } from '../../../shared/model/look-key.ts';
import type { Desk } from '../operation.ts';
import { storedSettings } from '../stored-settings.ts';
import { WRITER } from '../workbook-marks.ts';

/** Changes the named settings and leaves all others. */
export function saveSettings({ workbook }: Desk, changes: z.infer<typeof SaveSettings>): Result<Settings, Refusal> {
  const twice = keyUsedTwice(changes.resultLetters ?? {});
  if (twice) return refuse({ kind: 'result-key-twice', field: 'resultLetters', ...twice });
  return workbook.change({ did: 'save-settings' }, ({ settings }) => {
    const { people, writer } = { ...storedSettings(settings), ...changes };
    if (changes.writer && !people?.includes(changes.writer))
      return refuse({ kind: 'writer-not-listed', field: 'writer', name: changes.writer });
    for (const [key, value] of Object.entries(changes)) {
      if (value !== undefined) settings.put(key, value);
    }
    // Who is no longer on the list types no longer.
    if (writer && !people?.includes(writer)) settings.put(WRITER, null);
    return ok(storedSettings(settings));
  });
}
