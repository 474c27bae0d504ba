-- What becomes of a queen after her box, what is to be looked at again, and what a hive is worth as stock.
-- Days are ISO text; NULL means "not known". Lists of words are held by the records' schemas, as before.

-- Her mother where the person knows it; else she is reckoned from the batch's breeder and who headed it then.
ALTER TABLE queen ADD COLUMN mother_id TEXT REFERENCES queen (id);
CREATE INDEX queen_mother ON queen (mother_id) WHERE mother_id IS NOT NULL;

CREATE TABLE queen_move (
  id TEXT PRIMARY KEY NOT NULL,
  queen_id TEXT NOT NULL REFERENCES queen (id),
  moved_on TEXT NOT NULL CHECK (moved_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  place TEXT NOT NULL,
  colony_id TEXT REFERENCES colony (id),
  gone_to TEXT,
  way TEXT,
  price TEXT,
  note TEXT
) STRICT;
CREATE INDEX queen_move_queen ON queen_move (queen_id, moved_on);
CREATE INDEX queen_move_colony ON queen_move (colony_id) WHERE colony_id IS NOT NULL;

CREATE TABLE queen_feedback (
  id TEXT PRIMARY KEY NOT NULL,
  queen_id TEXT NOT NULL REFERENCES queen (id),
  told_on TEXT NOT NULL CHECK (told_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  told_by TEXT,
  outcome TEXT NOT NULL,
  note TEXT
) STRICT;
CREATE INDEX queen_feedback_queen ON queen_feedback (queen_id);

CREATE TABLE follow_up (
  id TEXT PRIMARY KEY NOT NULL,
  what TEXT NOT NULL,
  due_on TEXT NOT NULL CHECK (due_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  latest_on TEXT NOT NULL CHECK (latest_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  queen_id TEXT REFERENCES queen (id),
  box_id TEXT REFERENCES mating_box (id),
  colony_id TEXT REFERENCES colony (id),
  done_on TEXT CHECK (done_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  answer TEXT,
  note TEXT
) STRICT;
CREATE INDEX follow_up_open ON follow_up (due_on) WHERE done_on IS NULL;
CREATE INDEX follow_up_queen ON follow_up (queen_id) WHERE queen_id IS NOT NULL;
CREATE INDEX follow_up_box ON follow_up (box_id) WHERE box_id IS NOT NULL;
CREATE INDEX follow_up_colony ON follow_up (colony_id) WHERE colony_id IS NOT NULL;

-- One score of one trait on one day, 1 to 4 in half points.
CREATE TABLE stock_score (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  trait TEXT NOT NULL,
  scored_on TEXT NOT NULL CHECK (scored_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  score REAL NOT NULL CHECK (score >= 1),
  note TEXT,
  UNIQUE (colony_id, trait, scored_on)
) STRICT;

-- Counts and weights: cells cleared of cells pierced, mites of bees, mites over days, kilograms of honey.
CREATE TABLE stock_test (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  kind TEXT NOT NULL,
  tested_on TEXT NOT NULL CHECK (tested_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  counted REAL NOT NULL CHECK (counted >= 0),
  out_of REAL CHECK (out_of > 0),
  hours REAL CHECK (hours > 0),
  note TEXT
) STRICT;
CREATE INDEX stock_test_colony ON stock_test (colony_id, tested_on);

CREATE TABLE treatment (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  from_on TEXT NOT NULL CHECK (from_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  to_on TEXT CHECK (to_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  product TEXT NOT NULL,
  amount TEXT,
  reason TEXT,
  paper TEXT,
  note TEXT
) STRICT;
CREATE INDEX treatment_colony ON treatment (colony_id, from_on);

CREATE TABLE colony_move (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  moved_on TEXT NOT NULL CHECK (moved_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  from_yard_id TEXT REFERENCES yard (id),
  to_yard_id TEXT REFERENCES yard (id),
  place TEXT,
  paper TEXT,
  note TEXT
) STRICT;
CREATE INDEX colony_move_colony ON colony_move (colony_id, moved_on);
