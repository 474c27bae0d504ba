-- What a batch came to, kept beside it and recomputed in the same transaction as any count, look or placement.
-- NULL = not known (yet), never 0.

CREATE TABLE batch_tally (
  batch_id TEXT PRIMARY KEY NOT NULL REFERENCES batch (id) ON DELETE CASCADE,
  given INTEGER CHECK (given >= 0),
  taken INTEGER CHECK (taken >= 0),
  entered_sealing INTEGER CHECK (entered_sealing >= 0),
  sealed INTEGER CHECK (sealed >= 0),
  placed INTEGER NOT NULL CHECK (placed >= 0),
  emergence_known INTEGER NOT NULL CHECK (emergence_known >= 0),
  emerged INTEGER NOT NULL CHECK (emerged >= 0),
  mating_known INTEGER NOT NULL CHECK (mating_known >= 0),
  proved INTEGER NOT NULL CHECK (proved >= 0),
  laying INTEGER NOT NULL CHECK (laying >= 0)
) STRICT;
