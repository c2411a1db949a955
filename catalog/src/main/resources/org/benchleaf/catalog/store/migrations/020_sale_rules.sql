-- Lists of sale rules. A list that is loaded again becomes a new version; earlier ones stay, so that what was quoted to
-- a customer can be shown with the rules of that day.

CREATE TABLE sale_rule_list (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,        -- the file's name without its ending; the newest of a name is in force
    compiled_on TEXT NOT NULL, -- the newest of its rows
    revision INTEGER NOT NULL, -- the state that its loading made
    loaded_at TEXT NOT NULL
)${strict};

-- Texts as in the file; docs/sale-rules.md says what each holds.
CREATE TABLE sale_rule (
    list INTEGER NOT NULL REFERENCES sale_rule_list (id),
    place INTEGER NOT NULL, -- its row among the rows of the list, from 0
    id TEXT NOT NULL,
    kind TEXT NOT NULL,
    jurisdiction TEXT NOT NULL,
    taxon TEXT NOT NULL,
    also_named TEXT NOT NULL,
    covers TEXT NOT NULL,
    standing TEXT NOT NULL,
    listed TEXT NOT NULL,
    receipt_from TEXT NOT NULL,
    sale_from TEXT NOT NULL,
    until TEXT NOT NULL,
    exempt TEXT NOT NULL,
    notice TEXT NOT NULL,
    source TEXT NOT NULL,
    compiled_on TEXT NOT NULL,
    PRIMARY KEY (list, place)
)${clustered};
