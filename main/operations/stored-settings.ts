import { Settings } from '../../shared/contract/settings.ts';
import type { SettingTable } from '../workbook/workbook.ts';

/** What holds until the person chooses otherwise. */
export const DEFAULT_SETTINGS: Settings = {
  theme: 'system',
  textSizePercent: 100,
  density: 'comfortable',
  language: 'system',
  dateOrder: 'day-first',
  weekStart: 'monday',
  temperature: 'celsius',
  measures: 'metric',
  letterKeys: true,
  resultLetters: {},
  people: [],
  writer: null,
  awayDays: [],
  workWeekdays: [1, 2, 3, 4, 5, 6, 7],
  // A planning figure the person can change: common practice, no source.
  cellsPerBuilder: 20,
  builderRestDays: 5,
  seasonFactorPercent: 100,
  firstDroneEggsOn: null,
};

/** The settings in the workbook over the defaults. A value that does not fit (any longer) gives way to its default. */
export function storedSettings(table: SettingTable): Settings {
  const stored = Object.entries(Settings.shape).flatMap(([key, schema]) => {
    const parsed = schema.safeParse(table.get(key));
    return parsed.success ? [[key, parsed.data] as const] : [];
  });
  return Settings.parse({ ...DEFAULT_SETTINGS, ...Object.fromEntries(stored) });
}
