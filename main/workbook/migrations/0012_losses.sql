-- Why cells and queens of a batch were lost, stage by stage. No row = the reason is not known.

CREATE TABLE loss (
  id TEXT PRIMARY KEY NOT NULL,
  batch_id TEXT NOT NULL REFERENCES batch (id),
  stage TEXT NOT NULL,
  reason TEXT NOT NULL,
  cells INTEGER NOT NULL CHECK (cells > 0),
  UNIQUE (batch_id, stage, reason)
) STRICT;
