-- Whom the shop believes when sources disagree, after its own word: the best first. Empty where it has not said.
CREATE TABLE source_preference (
    place INTEGER PRIMARY KEY,
    text TEXT NOT NULL -- a source, or the words its name begins with
)${strict};
