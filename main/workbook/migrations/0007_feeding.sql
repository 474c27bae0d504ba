-- What a hive or a mating box was given to eat. How much is litres or kilograms, as the feed is measured; both NULL means
-- "given, not known how much". The list of feeds is held by the record's schema, as before.

CREATE TABLE feeding (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT REFERENCES colony (id),
  box_id TEXT REFERENCES mating_box (id),
  fed_on TEXT NOT NULL CHECK (fed_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  feed TEXT NOT NULL,
  own_feed TEXT,
  litres REAL CHECK (litres > 0),
  kilograms REAL CHECK (kilograms > 0),
  note TEXT,
  CHECK ((colony_id IS NULL) <> (box_id IS NULL)),
  CHECK (litres IS NULL OR kilograms IS NULL)
) STRICT;
CREATE INDEX feeding_colony ON feeding (colony_id, fed_on) WHERE colony_id IS NOT NULL;
CREATE INDEX feeding_box ON feeding (box_id, fed_on) WHERE box_id IS NOT NULL;
