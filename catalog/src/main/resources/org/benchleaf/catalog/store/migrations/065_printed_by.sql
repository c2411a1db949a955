-- Who printed it; empty for what was printed before this was written down.

ALTER TABLE print_entry ADD COLUMN who TEXT NOT NULL DEFAULT '';
