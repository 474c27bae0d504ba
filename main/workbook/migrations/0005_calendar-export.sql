-- Calendar events as they were last given out. There is no foreign key to the batch on purpose: an event that is in
-- somebody's phone must be taken back also when its batch is no longer in the workbook.

CREATE TABLE calendar_export (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL,
  sequence INTEGER NOT NULL CHECK (sequence >= 0),
  from_on TEXT NOT NULL CHECK (from_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  to_on TEXT NOT NULL CHECK (to_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
  summary TEXT NOT NULL,
  location TEXT,
  category TEXT NOT NULL,
  alarm TEXT NOT NULL,
  cancelled INTEGER NOT NULL CHECK (cancelled IN (0, 1)),
  exported_on TEXT NOT NULL CHECK (exported_on GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]')
) STRICT;
CREATE INDEX calendar_export_batch ON calendar_export (batch_id);
