-- What was printed. Entries are only added; a plant is named by its permanent key and stays readable when it is retired.

CREATE TABLE print_entry (
    entry INTEGER PRIMARY KEY,
    printed_at TEXT NOT NULL,  -- ISO 8601, UTC
    document TEXT NOT NULL,    -- card, label, sheet
    format TEXT NOT NULL,      -- size of card or key of paper
    plant TEXT NOT NULL,
    item INTEGER,
    detail TEXT NOT NULL,      -- such as the lot of a label; may be empty
    name TEXT NOT NULL,        -- as printed
    price TEXT,                -- as printed
    base TEXT NOT NULL,        -- the server on which its code depends
    address TEXT NOT NULL,
    digest TEXT NOT NULL,      -- of everything it says
    copies INTEGER NOT NULL CHECK (copies >= 1)
)${strict};
CREATE INDEX print_entry_of_thing ON print_entry (document, plant, item);
CREATE INDEX print_entry_by_base ON print_entry (base);
