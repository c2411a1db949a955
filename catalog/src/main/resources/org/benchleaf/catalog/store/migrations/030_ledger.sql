-- Holds become rows of their own, beside the count and not out of it; ready weeks and conditions go through the ledger
-- too; and an import is refused only when what it was planned against has changed.

-- The state of the last import or undo: names and facts are as they were then, whatever the ledger did since.
ALTER TABLE catalog_state ADD COLUMN book_revision INTEGER NOT NULL DEFAULT 0;
UPDATE catalog_state SET book_revision = revision;
-- The state that the last ledger entry of the lot made which changed what an import states of it.
ALTER TABLE lot ADD COLUMN moved INTEGER NOT NULL DEFAULT 0;

-- A constraint cannot be changed everywhere, so the ledger is written over into a new table. Entries of the kind held
-- that are older than this took plants out of the count; they stay as they are, and the sum with them.
CREATE TABLE ledger_entry (
    entry INTEGER PRIMARY KEY,
    lot TEXT NOT NULL REFERENCES lot (lot),
    kind TEXT NOT NULL CHECK (kind IN
        ('counted', 'received', 'held', 'released', 'shipped', 'lost', 'moved', 'ready', 'seen')),
    quantity INTEGER NOT NULL,  -- what it adds to the lot; negative when it takes away
    stated INTEGER NOT NULL,    -- the number as it was given: a count found, or how many came or went
    held INTEGER NOT NULL,      -- what it adds to its hold; negative when it takes away
    hold TEXT,                  -- the key of the entry that made the hold
    held_until TEXT,            -- when a hold made by it ends, ISO 8601, UTC, whole seconds
    other_lot TEXT,             -- where plants came from or went to
    detail TEXT NOT NULL,       -- the new place, ready week or condition
    happened_at TEXT NOT NULL,
    entered_at TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    idempotency_key TEXT UNIQUE -- empty only for the other half of a move
)${strict};
INSERT INTO ledger_entry (entry, lot, kind, quantity, stated, held, detail, happened_at, entered_at, who, why,
    idempotency_key)
    SELECT entry, lot, kind, quantity, stated, 0, '', happened_at, happened_at, who, why, idempotency_key FROM ledger;
DROP TABLE ledger;
ALTER TABLE ledger_entry RENAME TO ledger;
CREATE INDEX ledger_by_lot ON ledger (lot, entry);
CREATE INDEX ledger_by_hold ON ledger (hold);

-- What is left of each hold: always the sum of its entries; a hold of which nothing is left has no row.
CREATE TABLE hold (
    hold TEXT PRIMARY KEY,
    lot TEXT NOT NULL REFERENCES lot (lot),
    plant INTEGER NOT NULL REFERENCES plant (serial),
    quantity INTEGER NOT NULL CHECK (quantity > 0),
    held_until TEXT
)${clustered};
CREATE INDEX hold_by_lot ON hold (lot);
CREATE INDEX hold_by_plant ON hold (plant);
CREATE INDEX hold_by_end ON hold (held_until);
