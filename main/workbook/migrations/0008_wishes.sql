-- Queens somebody wants by a day. NULL = for own hives, or still open.

CREATE TABLE wish (
  id TEXT PRIMARY KEY NOT NULL,
  for_whom TEXT,
  queens INTEGER NOT NULL CHECK (queens > 0),
  wanted_on TEXT NOT NULL CHECK (wanted_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  settled_on TEXT CHECK (settled_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  note TEXT
) STRICT;
