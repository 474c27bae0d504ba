-- Which batch, mating box, hive or queen a changed row is, or belongs to, is written down with the change instead of being
-- read out of its values at every save; and the rows are no longer found by their own key, which cost a save as many pages
-- as it had rows. A row that is gone had its last values in the change that removed it.

CREATE TABLE journal_change_2 (
  id INTEGER PRIMARY KEY NOT NULL,
  step_id INTEGER NOT NULL REFERENCES journal_step (id) DEFERRABLE INITIALLY DEFERRED,
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  -- Where SQLite kept the row: lists keep their order when it comes back.
  place INTEGER NOT NULL,
  -- The columns and their values; NULL where there was no row before, or is none after.
  old TEXT CHECK (json_valid(old)),
  new TEXT CHECK (json_valid(new)),
  batch_id TEXT,
  box_id TEXT,
  colony_id TEXT,
  queen_id TEXT
) STRICT;

INSERT INTO journal_change_2
SELECT
  id, step_id, table_name, row_id, place, old, new,
  iif(table_name = 'batch', row_id, json_extract(coalesce(new, old), '$.batch_id')),
  iif(table_name = 'mating_box', row_id, json_extract(coalesce(new, old), '$.box_id')),
  iif(table_name = 'colony', row_id, json_extract(coalesce(new, old), '$.colony_id')),
  iif(table_name = 'queen', row_id, json_extract(coalesce(new, old), '$.queen_id'))
FROM journal_change ORDER BY id;

DROP TABLE journal_change;
ALTER TABLE journal_change_2 RENAME TO journal_change;

CREATE INDEX journal_change_step ON journal_change (step_id);
CREATE INDEX journal_change_gone ON journal_change (row_id) WHERE new IS NULL;
CREATE INDEX journal_change_batch ON journal_change (batch_id) WHERE batch_id IS NOT NULL;
CREATE INDEX journal_change_box ON journal_change (box_id) WHERE box_id IS NOT NULL;
CREATE INDEX journal_change_colony ON journal_change (colony_id) WHERE colony_id IS NOT NULL;
CREATE INDEX journal_change_queen ON journal_change (queen_id) WHERE queen_id IS NOT NULL;

CREATE TRIGGER journal_change_stays BEFORE UPDATE ON journal_change BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_change_is_kept BEFORE DELETE ON journal_change BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
