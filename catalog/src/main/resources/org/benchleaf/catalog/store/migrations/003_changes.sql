-- The change feed, and which files made which state.

-- One row for a plant and kind of change, at its last change: readers that follow need no more than that.
CREATE TABLE plant_change (
    plant INTEGER NOT NULL REFERENCES plant (serial),
    kind TEXT NOT NULL CHECK (kind IN ('PLANT', 'STOCK')),
    revision INTEGER NOT NULL,
    PRIMARY KEY (plant, kind)
)${clustered};
CREATE INDEX plant_change_by_revision ON plant_change (revision);

CREATE TABLE import (
    id INTEGER PRIMARY KEY,
    file TEXT NOT NULL,
    sha256 TEXT,
    row_count INTEGER NOT NULL,
    findings INTEGER NOT NULL,
    revision INTEGER NOT NULL, -- the state after it; the state before it when it changed nothing
    applied_at TEXT NOT NULL
)${strict};
