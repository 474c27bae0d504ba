-- Queens promised to somebody. NULL = no day was said. Whether a promise was kept follows from the moves of the queen.

CREATE TABLE queen_promise (
  id TEXT PRIMARY KEY NOT NULL,
  queen_id TEXT NOT NULL REFERENCES queen (id),
  promised_on TEXT NOT NULL CHECK (promised_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  promised_to TEXT NOT NULL,
  wanted_on TEXT CHECK (wanted_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  note TEXT
) STRICT;
CREATE INDEX queen_promise_queen ON queen_promise (queen_id);
