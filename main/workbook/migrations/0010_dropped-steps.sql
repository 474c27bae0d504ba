-- Jobs of a timetable that will not be done, and why. A step that is done after all is in step_done, which then holds.

CREATE TABLE step_drop (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  step TEXT NOT NULL,
  dropped_on TEXT NOT NULL CHECK (dropped_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  reason TEXT NOT NULL,
  UNIQUE (batch_id, step)
) STRICT;
