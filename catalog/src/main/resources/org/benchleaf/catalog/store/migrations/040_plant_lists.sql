-- Plant lists of jobs: small, written as a whole.

CREATE TABLE plant_list (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE, -- the name in lower case
    version INTEGER NOT NULL,    -- counts saves, so that one of two people who change it at once is told
    next_line INTEGER NOT NULL,
    zone TEXT,
    light TEXT,
    soil TEXT,
    ship_to TEXT,
    by_week TEXT,
    changed_at TEXT NOT NULL
)${strict};

-- A plant is named by its permanent key and stays readable when it is retired.
CREATE TABLE plant_list_line (
    list INTEGER NOT NULL REFERENCES plant_list (id),
    line INTEGER NOT NULL CHECK (line >= 1),
    plant TEXT NOT NULL,
    size TEXT,
    quantity INTEGER NOT NULL CHECK (quantity >= 1),
    worked TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (list, line)
)${clustered};
