-- Whose prices a customer pays; empty for the catalog's own, and for staff.

ALTER TABLE staff ADD COLUMN tier TEXT NOT NULL DEFAULT '';
