import type BetterSqlite3 from 'better-sqlite3';
import type { IsoDay } from '../../../shared/kernel/day.ts';
import type { WeatherDay } from '../../../shared/model/weather.ts';
import type { WeatherTable } from '../workbook.ts';
import { defineTable, plain, type TableShape, type WriteGuard } from './define-table.ts';

const weatherShape: TableShape<WeatherDay> = {
  name: 'weather_day',
  columns: {
    id: plain('id'),
    day: plain('day'),
    maxCelsius: plain('max_celsius'),
    windKmh: plain('wind_kmh'),
    rain: {
      sql: 'rain',
      write: (rain) => (rain === null ? null : Number(rain)),
      read: (stored) => (stored === null ? null : stored === 1),
    },
    flyingHours: plain('flying_hours'),
  },
};

/** One row a day, found by spans of days as well. */
export function weatherTable(db: BetterSqlite3.Database, guardWrite: WriteGuard): WeatherTable {
  const table = defineTable(db, weatherShape, guardWrite);
  const span = db
    .prepare<[IsoDay, IsoDay], string>('SELECT id FROM weather_day WHERE day BETWEEN ? AND ? ORDER BY day')
    .pluck();
  return {
    ...table,
    between: (from, to) => span.all(from, to).flatMap((id) => table.get(id) ?? []),
  };
}
