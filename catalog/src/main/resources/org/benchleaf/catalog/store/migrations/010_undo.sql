-- What the last imports changed, so that one of them can be taken back exactly.

-- A row taken back is hidden, never deleted: keys and item numbers may be on paper already, the ledger names its lot for
-- ever, and the same file loaded again gives each thing the number it had.
ALTER TABLE plant ADD COLUMN withdrawn INTEGER NOT NULL DEFAULT 0;
ALTER TABLE item ADD COLUMN withdrawn INTEGER NOT NULL DEFAULT 0;
ALTER TABLE lot ADD COLUMN withdrawn INTEGER NOT NULL DEFAULT 0;

ALTER TABLE import ADD COLUMN changed INTEGER NOT NULL DEFAULT 0;    -- 1 when it changed anything
ALTER TABLE import ADD COLUMN last_entry INTEGER NOT NULL DEFAULT 0; -- the newest ledger entry after it
ALTER TABLE import ADD COLUMN undone_at TEXT;

-- One row for each row of another table that an import made, changed or removed; kept for the newest imports only.
CREATE TABLE import_change (
    import INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    thing TEXT NOT NULL CHECK (thing IN ('plant', 'rename', 'fact', 'name', 'item', 'lot')),
    plant INTEGER NOT NULL,
    id TEXT NOT NULL, -- what tells the row from others of the plant
    before TEXT,      -- its columns as a JSON list; empty when there was none
    after TEXT,       -- empty when it was removed
    PRIMARY KEY (import, seq)
)${clustered};
