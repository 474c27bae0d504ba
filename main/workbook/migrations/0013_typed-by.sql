-- Who typed a change, where the person has said who types; NULL where nobody is named.
ALTER TABLE journal_step ADD COLUMN typed_by TEXT;
