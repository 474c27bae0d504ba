-- Every change as one named step, and every row it touched with its old and new values. Rows are only ever added: taking a
-- step back is itself a step. What fills these tables are triggers made anew at each opening (journal-triggers.ts), so
-- that no table that is added later can be forgotten.

CREATE TABLE journal_step (
  id INTEGER PRIMARY KEY NOT NULL,
  at TEXT NOT NULL,
  -- 'change', 'undo', 'redo', or 'begin' for a step that is not taken back, nor anything before it.
  kind TEXT NOT NULL,
  -- The step that an undo or redo is about.
  of_step INTEGER REFERENCES journal_step (id),
  -- What was done, as facts; the sentence is made when it is shown.
  words TEXT NOT NULL CHECK (json_valid(words))
) STRICT;
CREATE INDEX journal_step_of ON journal_step (of_step) WHERE of_step IS NOT NULL;

-- A row of a step that was never written would fail at the end of its transaction: nothing is written without a name.
CREATE TABLE journal_change (
  id INTEGER PRIMARY KEY NOT NULL,
  step_id INTEGER NOT NULL REFERENCES journal_step (id) DEFERRABLE INITIALLY DEFERRED,
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  -- Where SQLite kept the row: lists keep their order when it comes back.
  place INTEGER NOT NULL,
  -- The columns and their values; NULL where there was no row before, or is none after.
  old TEXT CHECK (json_valid(old)),
  new TEXT CHECK (json_valid(new)),
  batch_id TEXT GENERATED ALWAYS AS (json_extract(coalesce(new, old), '$.batch_id')) VIRTUAL,
  box_id TEXT GENERATED ALWAYS AS (json_extract(coalesce(new, old), '$.box_id')) VIRTUAL,
  colony_id TEXT GENERATED ALWAYS AS (json_extract(coalesce(new, old), '$.colony_id')) VIRTUAL
) STRICT;
CREATE INDEX journal_change_step ON journal_change (step_id);
CREATE INDEX journal_change_row ON journal_change (row_id);
CREATE INDEX journal_change_batch ON journal_change (batch_id) WHERE batch_id IS NOT NULL;
CREATE INDEX journal_change_box ON journal_change (box_id) WHERE box_id IS NOT NULL;
CREATE INDEX journal_change_colony ON journal_change (colony_id) WHERE colony_id IS NOT NULL;

CREATE TRIGGER journal_step_stays BEFORE UPDATE ON journal_step BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_step_is_kept BEFORE DELETE ON journal_step BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_change_stays BEFORE UPDATE ON journal_change BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_change_is_kept BEFORE DELETE ON journal_change BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
