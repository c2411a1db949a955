-- Who may sign in, who is signed in, and what they did. Of passwords and tokens only sums are stored.

CREATE TABLE staff (
    folded TEXT PRIMARY KEY, -- the name by which it is told apart
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    active INTEGER NOT NULL CHECK (active IN (0, 1)),
    password TEXT NOT NULL,  -- Argon2id, with its parameters
    since TEXT NOT NULL
)${clustered};

CREATE TABLE staff_session (
    sum TEXT PRIMARY KEY,
    id TEXT NOT NULL,
    staff TEXT NOT NULL REFERENCES staff (folded),
    started_at TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    address TEXT NOT NULL,
    device TEXT NOT NULL
)${clustered};
CREATE INDEX staff_session_by_staff ON staff_session (staff);

CREATE TABLE staff_token (
    sum TEXT PRIMARY KEY,
    id TEXT NOT NULL,
    staff TEXT NOT NULL REFERENCES staff (folded),
    label TEXT NOT NULL,
    made_at TEXT NOT NULL,
    ends_at TEXT NOT NULL,
    used_at TEXT
)${clustered};
CREATE INDEX staff_token_by_staff ON staff_token (staff);

-- Failed attempts under account:NAME, address:ADDRESS and place:NAME@ADDRESS.
CREATE TABLE sign_in_failure (
    subject TEXT PRIMARY KEY,
    failures INTEGER NOT NULL CHECK (failures >= 0),
    last_at TEXT NOT NULL
)${clustered};

-- Only grows.
CREATE TABLE staff_log (
    entry INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    who TEXT NOT NULL,
    address TEXT NOT NULL,
    act TEXT NOT NULL,
    about TEXT NOT NULL
)${strict};
CREATE INDEX staff_log_by_place ON staff_log (act, address, at);
