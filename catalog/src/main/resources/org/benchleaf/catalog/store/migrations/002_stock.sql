-- Items, their lots, and the ledger whose sums are the counts.

CREATE TABLE item (
    plant INTEGER NOT NULL REFERENCES plant (serial),
    number INTEGER NOT NULL CHECK (number BETWEEN 1 AND 999), -- never used again
    size TEXT NOT NULL,
    form TEXT NOT NULL,
    gtin TEXT,
    price TEXT, -- amount and currency, 21.50 USD
    PRIMARY KEY (plant, number),
    UNIQUE (plant, size, form)
)${clustered};

CREATE TABLE lot (
    lot TEXT PRIMARY KEY, -- the grower's own number
    plant INTEGER NOT NULL,
    item INTEGER NOT NULL,
    place TEXT NOT NULL,
    ready_week TEXT, -- 2027-W14; empty when it is ready
    on_hand INTEGER NOT NULL CHECK (on_hand >= 0), -- always the sum of the lot's ledger entries
    conditions TEXT NOT NULL,
    seen_on TEXT,
    FOREIGN KEY (plant, item) REFERENCES item (plant, number)
)${clustered};
CREATE INDEX lot_by_item ON lot (plant, item);

-- Entries are only ever added.
CREATE TABLE ledger (
    entry INTEGER PRIMARY KEY,
    lot TEXT NOT NULL REFERENCES lot (lot),
    kind TEXT NOT NULL
        CHECK (kind IN ('counted', 'received', 'held', 'released', 'shipped', 'lost', 'moved')),
    quantity INTEGER NOT NULL, -- what it adds to the lot; negative when it takes away
    stated INTEGER NOT NULL,   -- the number as it was given: a count found, or how many came or went
    happened_at TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    idempotency_key TEXT NOT NULL UNIQUE
)${strict};
CREATE INDEX ledger_by_lot ON ledger (lot);
