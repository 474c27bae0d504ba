import type { Draft, DraftSetting } from './draft.ts';
import type { RowReader } from './row-reader.ts';

/** Yes and no, also as other programs write them. */
const RAIN = { yes: 'yes', no: 'no', true: '1', false: '0', ja: 'ja', nein: 'nein' } as const;
/** What a day can bring; the record's own limits. */
const LIMITS = { celsius: [-40, 55], wind: [0, 200], hours: [0, 5] } as const;

/** One day of flight weather. A day that is noted already is not written over. */
export function draftWeather(row: RowReader, { tables, seen }: DraftSetting): Draft | null {
  row.needed('day', 40);
  const day = row.day('day');
  const rain = row.choice('rain', () => RAIN);
  const noted = {
    maxCelsius: row.figure('maxCelsius', LIMITS.celsius),
    windKmh: row.figure('windKmh', LIMITS.wind),
    rain: rain === null ? null : ['yes', 'true', 'ja'].includes(rain),
    flyingHours: row.figure('flyingHours', LIMITS.hours),
  };
  if (day === null) return null;
  const earlier = seen.get(day);
  if (earlier !== undefined) row.note('day', 'twice', earlier);
  else if (tables.weather.between(day, day).length > 0) row.note('day', 'there-already');
  if (earlier === undefined) seen.set(day, row.number);
  return { yard: null, write: ({ weather }) => weather.insert({ id: day, day, ...noted }) };
}
