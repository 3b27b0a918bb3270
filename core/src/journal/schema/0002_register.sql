-- The register: read models, rebuilt from the journal at any time.
CREATE TABLE register_repair (
  id INTEGER PRIMARY KEY,
  repair TEXT NOT NULL UNIQUE,
  number TEXT NOT NULL,
  line TEXT NOT NULL,
  nodes TEXT NOT NULL,
  street TEXT NOT NULL,
  live INTEGER NOT NULL CHECK (live IN (0, 1)),
  changed_ms INTEGER NOT NULL,
  certificate TEXT,
  summary BLOB NOT NULL
) STRICT;

CREATE INDEX register_by_change ON register_repair (changed_ms, repair);
CREATE INDEX register_live ON register_repair (repair) WHERE live = 1;

CREATE TABLE register_lot (
  repair TEXT NOT NULL REFERENCES register_repair (repair) ON DELETE CASCADE,
  lot TEXT NOT NULL,
  PRIMARY KEY (repair, lot)
) STRICT, WITHOUT ROWID;

-- One row a repair, with the same id: everything that can be searched for, in lower case without accents.
CREATE VIRTUAL TABLE register_search USING fts5(words, tokenize = 'trigram case_sensitive 1');

-- The last entry up to which every repair is listed. Written with the entries; behind them where something else wrote.
CREATE TABLE register_upto (entry INTEGER NOT NULL) STRICT;
INSERT INTO register_upto VALUES (0);
