-- Crop walks and what was seen on them. A sighting is kept whatever the catalog says of it.

CREATE TABLE walk (
    walk TEXT PRIMARY KEY,  -- made on the telephone
    who TEXT NOT NULL,
    started_at TEXT NOT NULL
)${clustered};

CREATE TABLE sighting (
    number INTEGER PRIMARY KEY,
    sighting TEXT NOT NULL UNIQUE,  -- made on the telephone
    walk TEXT NOT NULL REFERENCES walk (walk),
    plant TEXT NOT NULL,            -- as it was sent: perhaps no plant of this catalog
    item INTEGER,
    lot TEXT,
    place TEXT NOT NULL,
    conditions TEXT NOT NULL,
    height_cm INTEGER,
    found INTEGER,
    photo TEXT,                     -- a file of the shop's folder of photographs
    remark TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    who TEXT NOT NULL,
    received_at TEXT NOT NULL,
    standing TEXT NOT NULL CHECK (standing IN ('noted', 'conflict', 'settled')),
    problem TEXT NOT NULL,          -- what stood in its way: a key, then name and value of each detail, line by line
    settled_how TEXT,
    settled_by TEXT,
    settled_at TEXT
)${strict};
CREATE INDEX sighting_by_walk ON sighting (walk, number);
CREATE INDEX sighting_by_standing ON sighting (standing, number);
