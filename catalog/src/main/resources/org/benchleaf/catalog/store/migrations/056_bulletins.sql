-- The bulletin of a week: which sightings it tells of, in which order, and why each plant is worth buying now.

CREATE TABLE bulletin (
    week TEXT PRIMARY KEY,      -- 2026-W41
    version INTEGER NOT NULL,   -- counts saves, so that one of two people who change it at once is told
    greeting TEXT NOT NULL,
    who TEXT NOT NULL,
    changed_at TEXT NOT NULL,
    published_at TEXT           -- empty while nobody else sees it
)${clustered};

CREATE TABLE bulletin_line (
    week TEXT NOT NULL REFERENCES bulletin (week),
    line INTEGER NOT NULL CHECK (line >= 1),
    sighting TEXT NOT NULL REFERENCES sighting (sighting),
    reason TEXT NOT NULL,
    PRIMARY KEY (week, line)
)${clustered};
