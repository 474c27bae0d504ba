-- The first tables: one per kind of record in shared/model.
--
-- Days are ISO text (YYYY-MM-DD); NULL means "not known", never 0. A list of words that may grow (methods, steps,
-- results) is not checked here: a CHECK can only be changed by rebuilding its table, and the record's schema holds the
-- list already.
-- Foreign keys carry the plain default (NO ACTION): a row that others point to cannot go, but inside one transaction
-- with defer_foreign_keys the order of deletions is free, which undo will need. RESTRICT would forbid that.

CREATE TABLE yard (
  id TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL UNIQUE,
  note TEXT
) STRICT;

CREATE TABLE colony (
  id TEXT PRIMARY KEY NOT NULL,
  code TEXT NOT NULL UNIQUE,
  name TEXT,
  yard_id TEXT REFERENCES yard (id),
  place TEXT,
  mother_line TEXT,
  note TEXT,
  ended_on TEXT CHECK (ended_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]')
) STRICT;
CREATE INDEX colony_yard ON colony (yard_id);

CREATE TABLE colony_role (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  season INTEGER NOT NULL CHECK (season BETWEEN 1900 AND 2300),
  role TEXT NOT NULL,
  UNIQUE (colony_id, season, role)
) STRICT;
CREATE INDEX colony_role_season ON colony_role (season, role);

CREATE TABLE method_copy (
  id TEXT PRIMARY KEY NOT NULL,
  origin TEXT NOT NULL,
  name TEXT NOT NULL,
  changes TEXT NOT NULL CHECK (json_valid(changes))
) STRICT;

CREATE TABLE batch (
  id TEXT PRIMARY KEY NOT NULL,
  code TEXT NOT NULL UNIQUE,
  season INTEGER NOT NULL CHECK (season BETWEEN 1900 AND 2300),
  method TEXT NOT NULL,
  method_copy_id TEXT REFERENCES method_copy (id),
  comb TEXT,
  builder_type TEXT NOT NULL,
  breeder_id TEXT REFERENCES colony (id),
  builder_id TEXT REFERENCES colony (id),
  anchor_step TEXT NOT NULL,
  anchor_on TEXT NOT NULL CHECK (anchor_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  larva_age_from_hours INTEGER CHECK (larva_age_from_hours >= 0),
  larva_age_to_hours INTEGER CHECK (larva_age_to_hours >= 0),
  cells_planned INTEGER CHECK (cells_planned >= 0),
  practice INTEGER NOT NULL CHECK (practice IN (0, 1)),
  note TEXT,
  lesson TEXT,
  closed_on TEXT CHECK (closed_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]')
) STRICT;
CREATE INDEX batch_season ON batch (season);
CREATE INDEX batch_breeder ON batch (breeder_id);
CREATE INDEX batch_builder ON batch (builder_id);
CREATE INDEX batch_method_copy ON batch (method_copy_id) WHERE method_copy_id IS NOT NULL;
CREATE INDEX batch_open ON batch (anchor_on) WHERE closed_on IS NULL;

CREATE TABLE bar (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  number INTEGER NOT NULL CHECK (number >= 1),
  UNIQUE (batch_id, number)
) STRICT;

CREATE TABLE "count" (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  bar_id TEXT NOT NULL REFERENCES bar (id),
  stage TEXT NOT NULL,
  cells INTEGER NOT NULL CHECK (cells >= 0),
  counted_on TEXT NOT NULL CHECK (counted_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  UNIQUE (bar_id, stage)
) STRICT;
CREATE INDEX count_batch ON "count" (batch_id);

CREATE TABLE step_done (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  step TEXT NOT NULL,
  done_on TEXT NOT NULL CHECK (done_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  note TEXT,
  UNIQUE (batch_id, step)
) STRICT;

CREATE TABLE step_move (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  step TEXT NOT NULL,
  moved_to TEXT NOT NULL CHECK (moved_to GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  reason TEXT NOT NULL,
  UNIQUE (batch_id, step)
) STRICT;

CREATE TABLE observation (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  what TEXT NOT NULL,
  seen_on TEXT NOT NULL CHECK (seen_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  from_hours REAL CHECK (from_hours >= 0),
  to_hours REAL CHECK (to_hours >= 0),
  note TEXT
) STRICT;
CREATE INDEX observation_batch ON observation (batch_id);

CREATE TABLE mating_box (
  id TEXT PRIMARY KEY NOT NULL,
  code TEXT NOT NULL UNIQUE,
  yard_id TEXT REFERENCES yard (id),
  "row" TEXT,
  walk_order INTEGER NOT NULL CHECK (walk_order >= 0),
  box_type TEXT NOT NULL,
  note TEXT,
  retired_on TEXT CHECK (retired_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]')
) STRICT;
CREATE INDEX mating_box_yard ON mating_box (yard_id, walk_order);

CREATE TABLE placement (
  id TEXT PRIMARY KEY NOT NULL,
  box_id TEXT NOT NULL REFERENCES mating_box (id),
  batch_id TEXT NOT NULL REFERENCES batch (id),
  bar_id TEXT REFERENCES bar (id),
  placed_on TEXT NOT NULL CHECK (placed_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  ended_on TEXT CHECK (ended_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  end_reason TEXT
) STRICT;
CREATE INDEX placement_box ON placement (box_id);
CREATE INDEX placement_batch ON placement (batch_id);
CREATE INDEX placement_bar ON placement (bar_id) WHERE bar_id IS NOT NULL;
-- A box holds one cell or queen at a time.
CREATE UNIQUE INDEX placement_one_open_per_box ON placement (box_id) WHERE ended_on IS NULL;

CREATE TABLE box_look (
  id TEXT PRIMARY KEY NOT NULL,
  box_id TEXT NOT NULL REFERENCES mating_box (id),
  placement_id TEXT REFERENCES placement (id),
  looked_on TEXT NOT NULL CHECK (looked_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  result TEXT NOT NULL,
  strength INTEGER CHECK (strength BETWEEN 1 AND 5),
  food INTEGER CHECK (food BETWEEN 1 AND 5),
  note TEXT
) STRICT;
CREATE INDEX box_look_box ON box_look (box_id, looked_on);
CREATE INDEX box_look_placement ON box_look (placement_id);

CREATE TABLE hive_look (
  id TEXT PRIMARY KEY NOT NULL,
  colony_id TEXT NOT NULL REFERENCES colony (id),
  looked_on TEXT NOT NULL CHECK (looked_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  strength INTEGER CHECK (strength BETWEEN 1 AND 5),
  food INTEGER CHECK (food BETWEEN 1 AND 5),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX hive_look_colony ON hive_look (colony_id, looked_on);

CREATE TABLE queen (
  id TEXT PRIMARY KEY NOT NULL,
  number TEXT NOT NULL UNIQUE,
  born_in INTEGER NOT NULL CHECK (born_in BETWEEN 1900 AND 2300),
  placement_id TEXT REFERENCES placement (id),
  batch_id TEXT REFERENCES batch (id),
  breeder_id TEXT REFERENCES colony (id),
  mother_line TEXT,
  marked_on TEXT CHECK (marked_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  first_eggs_on TEXT CHECK (first_eggs_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  proved_on TEXT CHECK (proved_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  place TEXT NOT NULL,
  box_id TEXT REFERENCES mating_box (id),
  colony_id TEXT REFERENCES colony (id),
  gone_to TEXT,
  note TEXT
) STRICT;
CREATE INDEX queen_placement ON queen (placement_id);
CREATE INDEX queen_batch ON queen (batch_id);
CREATE INDEX queen_breeder ON queen (breeder_id);
CREATE INDEX queen_box ON queen (box_id);
CREATE INDEX queen_colony ON queen (colony_id);
CREATE INDEX queen_born ON queen (born_in);

CREATE TABLE label_print (
  id TEXT PRIMARY KEY NOT NULL,
  placement_id TEXT NOT NULL REFERENCES placement (id),
  printed_on TEXT NOT NULL CHECK (printed_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  words TEXT NOT NULL
) STRICT;
CREATE INDEX label_print_placement ON label_print (placement_id);

CREATE TABLE setting (
  key TEXT PRIMARY KEY NOT NULL,
  value TEXT NOT NULL CHECK (json_valid(value))
) STRICT;
