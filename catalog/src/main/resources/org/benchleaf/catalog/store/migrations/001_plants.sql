-- Plants, their names, and what each source states of them.
-- ${strict} and ${clustered} close a table: they are the dialect's words for strict types, and for keeping rows in the
-- order of their primary key. Never edited once released: a later migration changes what has to change.

-- The one row that says which state this is; every applied change counts it up.
CREATE TABLE catalog_state (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    revision INTEGER NOT NULL CHECK (revision >= 0),
    changed_at TEXT -- ISO 8601, UTC; empty until the first change
)${strict};
INSERT INTO catalog_state (id, revision, changed_at) VALUES (1, 0, NULL);

-- Rows are never deleted: what was printed for a plant leads here for ever, and a serial is never given twice.
CREATE TABLE plant (
    serial INTEGER PRIMARY KEY,
    plant_key TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL UNIQUE, -- the accepted name in plain text
    sort_key TEXT NOT NULL,
    -- The taxon whose facts it inherits, by name and not by serial: so a cultivar finds its taxon whichever came first.
    taxon_name TEXT,
    genus_mark TEXT NOT NULL,
    genus TEXT NOT NULL,
    species_mark TEXT,
    species TEXT,
    below_rank TEXT,
    below_mark TEXT,
    below_epithet TEXT,
    cultivar_group TEXT,
    cultivar TEXT,
    trade_designation TEXT,
    retired INTEGER NOT NULL DEFAULT 0 CHECK (retired IN (0, 1))
)${strict};
CREATE INDEX plant_by_taxon ON plant (taxon_name);

-- Who states facts and names, in the words printed beside them.
CREATE TABLE source (
    id INTEGER PRIMARY KEY,
    text TEXT NOT NULL UNIQUE
)${strict};

-- Common names (by language) and synonyms (language la), each with who gave it.
CREATE TABLE plant_name (
    plant INTEGER NOT NULL REFERENCES plant (serial),
    kind TEXT NOT NULL CHECK (kind IN ('common', 'synonym')),
    language TEXT NOT NULL,
    text TEXT NOT NULL,
    source INTEGER NOT NULL REFERENCES source (id),
    name_rank INTEGER NOT NULL, -- 0 a reference work, 1 the shop's own
    place INTEGER NOT NULL,     -- the most usual first
    PRIMARY KEY (plant, kind, language, text, source)
)${clustered};

-- One value of one attribute as one source states it. Sources that disagree are all kept; one is chosen.
CREATE TABLE fact (
    plant INTEGER NOT NULL REFERENCES plant (serial),
    attribute TEXT NOT NULL,
    source INTEGER NOT NULL REFERENCES source (id),
    value TEXT NOT NULL,
    source_rank INTEGER NOT NULL, -- 0 a reference work, 1 the shop's own
    entered INTEGER NOT NULL,     -- the revision that stated it
    chosen INTEGER NOT NULL CHECK (chosen IN (0, 1)),
    PRIMARY KEY (plant, attribute, source)
)${clustered};
