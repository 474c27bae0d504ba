-- Flight weather as noted, one row a day; and how warm the sealed cells of a batch are kept.
-- NULL = not known, never 0.

CREATE TABLE weather_day (
  id TEXT PRIMARY KEY NOT NULL,
  day TEXT NOT NULL UNIQUE CHECK (day GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  max_celsius REAL,
  wind_kmh REAL CHECK (wind_kmh >= 0),
  rain INTEGER CHECK (rain IN (0, 1)),
  flying_hours REAL CHECK (flying_hours >= 0)
) STRICT;

-- NULL = in a hive.
ALTER TABLE batch ADD COLUMN sealed_celsius REAL;
