-- The journal: history is closed by the database itself.
CREATE TABLE journal (
  id INTEGER PRIMARY KEY,
  repair TEXT NOT NULL,
  device TEXT NOT NULL,
  seq INTEGER NOT NULL CHECK (seq >= 1),
  prev BLOB NOT NULL CHECK (length(prev) % 32 = 0),
  body BLOB NOT NULL,
  hash BLOB NOT NULL UNIQUE CHECK (length(hash) = 32),
  UNIQUE (repair, device, seq)
) STRICT;

CREATE TRIGGER journal_no_update BEFORE UPDATE ON journal BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END;
CREATE TRIGGER journal_no_delete BEFORE DELETE ON journal BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END;
-- INSERT OR REPLACE takes out the old row without firing the trigger above.
CREATE TRIGGER journal_no_replace BEFORE INSERT ON journal
WHEN EXISTS (SELECT 1 FROM journal WHERE id = NEW.id OR hash = NEW.hash)
  OR EXISTS (SELECT 1 FROM journal WHERE repair = NEW.repair AND device = NEW.device AND seq = NEW.seq)
BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END;

-- What was asked and answered: a repeated request changes nothing.
CREATE TABLE request (
  request TEXT PRIMARY KEY,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  answer BLOB NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER request_no_update BEFORE UPDATE ON request BEGIN SELECT RAISE(ABORT, 'requests are append-only'); END;
CREATE TRIGGER request_no_delete BEFORE DELETE ON request BEGIN SELECT RAISE(ABORT, 'requests are append-only'); END;
CREATE TRIGGER request_no_replace BEFORE INSERT ON request
WHEN EXISTS (SELECT 1 FROM request WHERE request = NEW.request)
BEGIN SELECT RAISE(ABORT, 'requests are append-only'); END;
